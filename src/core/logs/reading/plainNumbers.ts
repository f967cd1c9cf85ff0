import { carriageReturn, lineFeed, minus, space } from './bytes'

/** The bytes between fields and inside numbers. */
export interface Marks {
  separator: number
  decimal: number
}

/** Reads the field at a place into `into[row]`; returns the place of the separator or line end behind it, or `notPlain`. */
export type ReadPlain = (bytes: Uint8Array, at: number, into: Float64Array, row: number) => number

/** Returned where a field is not plain digits; nothing was read then. */
export const notPlain = -1

/** Powers of ten are exact up to here, and so is a number of 15 digits divided by one: both as `Number` reads them. */
export const powers = Float64Array.from({ length: 16 }, (_, exponent) => 10 ** exponent)

/**
 * Reads plain decimal numbers from bytes without making strings of them. The bytes must end with a line end.
 *
 * Numbers come out as `Number` would read them, to the last bit: the digits as a whole number, divided once by a power of
 * ten, which is rounded correctly for 15 digits and fewer. Longer ones are not plain.
 */
export function plainNumbers(marks: Marks): ReadPlain {
  const { separator, decimal } = marks
  return (bytes: Uint8Array, begin: number, into: Float64Array, row: number) => {
    let at = begin
    let byte = bytes[at]!
    while (byte === space) byte = bytes[++at]!
    const negative = byte === minus
    if (negative) byte = bytes[++at]!
    let from = at
    let whole = 0
    // Nine digits fit a small integer, which is what makes this quick; longer ones are begun anew in `readWide`.
    for (let digit = (byte - 48) | 0; (digit >>> 0) < 10; digit = (byte - 48) | 0) {
      whole = (Math.imul(whole, 10) + digit) | 0
      byte = bytes[++at]!
    }
    let digits = at - from
    let decimals = 0
    if (byte === decimal) {
      from = at + 1
      byte = bytes[++at]!
      for (let digit = (byte - 48) | 0; (digit >>> 0) < 10; digit = (byte - 48) | 0) {
        whole = (Math.imul(whole, 10) + digit) | 0
        byte = bytes[++at]!
      }
      decimals = at - from
      digits += decimals
    }
    if (byte === carriageReturn && bytes[at + 1] === lineFeed) byte = bytes[++at]!
    if ((byte !== separator && byte !== lineFeed) || digits === 0) return notPlain
    if (digits > 9) return readWide(bytes, begin, into, row, marks)
    const value = decimals === 0 ? whole : whole / powers[decimals]!
    into[row] = negative ? -value : value
    return at
  }
}

/** The same for 10 to 15 digits, of which it is known that nothing else is in the way. */
function readWide(bytes: Uint8Array, begin: number, into: Float64Array, row: number, { separator, decimal }: Marks): number {
  let [at, whole, digits, point] = [begin, 0, 0, -1]
  let negative = false
  for (;; at++) {
    const byte = bytes[at]!
    if (byte === minus) negative = true
    else if (byte === decimal && byte !== separator) point = digits
    else if (byte >= 48 && byte <= 57) {
      whole = whole * 10 + byte - 48
      digits++
    } else if (byte === lineFeed || byte === separator) break
  }
  if (digits > 15) return notPlain
  const value = point < 0 ? whole : whole / powers[digits - point]!
  into[row] = negative ? -value : value
  return at
}
