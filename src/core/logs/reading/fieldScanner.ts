import { byteOf, decodeText, lineFeed, quote, space } from './bytes'
import { clockSeconds } from './clock'
import type { Dialect } from './dialect'
import { meansInfinite, meansMissing, numberFrom } from './fieldText'
import { countOne, type Tally } from './tally'

/** Both return the place of the separator or line end behind the field. */
export interface FieldScanner {
  /** Reads any field into `into[row]`; what is no number becomes NaN and is counted for what it is. */
  readSlowly: (bytes: Uint8Array, at: number, place: { into: Float64Array; row: number; slot: number; line: number }) => number
  skip: (bytes: Uint8Array, at: number) => number
}

/** Reads the fields that are not plain digits, and passes over those that are not wanted. */
export function fieldScanner(dialect: Dialect, clocks: readonly boolean[], tally: Tally): FieldScanner {
  const separator = byteOf(dialect.separator)
  const { quoted } = dialect

  function skip(bytes: Uint8Array, begin: number): number {
    let at = begin
    let byte = bytes[at]
    if (quoted && byte === quote) {
      at = pastQuotes(bytes, at, quoted)
      byte = bytes[at]
    }
    while (byte !== separator && byte !== lineFeed && byte !== undefined) byte = bytes[++at]
    return at
  }

  const readSlowly: FieldScanner['readSlowly'] = (bytes, begin, { into, row, slot, line }) => {
    let from = begin
    while (bytes[from] === space) from++
    const inQuotes = bytes[from] === quote ? pastQuotes(bytes, from, quoted) : -1
    const end = skip(bytes, inQuotes < 0 ? begin : inQuotes)
    const field = (inQuotes < 0 ? decodeText(bytes, from, Math.min(end, from + 80)) : decodeText(bytes, from + 1, Math.min(inQuotes - 1, from + 80))).trim()
    const value = clocks[slot] ? clockSeconds(field) ?? numberFrom(field, dialect.decimal) : numberFrom(field, dialect.decimal)
    into[row] = value !== undefined && Number.isFinite(value) ? value : NaN
    if (value === undefined) countOne(kindOf(field, dialect, tally)[slot]!, line)
    else if (!Number.isFinite(value)) countOne(tally.infinite[slot]!, line)
    return end
  }

  return { readSlowly, skip }
}

/**
 * The place behind the closing quote. Where there is none that of the last line end; in a table that has no quotes, where
 * one is a slip and line ends are line ends, -1.
 */
function pastQuotes(bytes: Uint8Array, opening: number, quoted: boolean): number {
  for (let at = opening + 1; at < bytes.length; at++) {
    if (!quoted && bytes[at] === lineFeed) return -1
    if (bytes[at] !== quote) continue
    if (bytes[at + 1] !== quote) return at + 1
    at++
  }
  return bytes.length - 1
}

function kindOf(field: string, { decimal }: Dialect, tally: Tally): Tally['missing'] {
  if (meansMissing(field)) return tally.missing
  if (meansInfinite(field)) return tally.infinite
  return numberFrom(field, decimal === '.' ? ',' : '.') === undefined ? tally.notNumbers : tally.otherMark
}
