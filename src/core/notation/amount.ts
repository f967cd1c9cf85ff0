import { notUnderstood, understood, type Reading } from './reading'

const vulgar: Record<string, number> = {
  '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅙': 1 / 6, '⅚': 5 / 6, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8,
}
const fractionChars = Object.keys(vulgar).join('')
// Every part is bounded, so that no text can make the match slow.
const mixed = new RegExp(`^([+-−]?)(?:(\\d{1,12})[ -]{0,2})?(?:(\\d{1,4})[/⁄](\\d{1,4})|([${fractionChars}]))(?![\\d/.,])`)
const decimal = /^([+\-−]?)(\d{1,12}(?:\.\d{0,12})?|\.\d{1,12})(?![\d.])/
const decimalComma = /^[+\-−]?\d{1,12},\d{1,12}(?!\d)/

/** A number at the start of a text, and the text behind it. */
export interface Amount {
  amount: number
  rest: string
}

/**
 * Reads the number at the start of a text as the trade writes it: `3`, `1.75`, `1 3/4`, `1-3/4`, `1¾`, `¾`.
 * A decimal comma is refused, with the point as the suggestion, because a file must read alike everywhere.
 *
 * @example readAmount('1 3/4 turns in') // { value: { amount: 1.75, rest: 'turns in' } }
 */
export function readAmount(text: string): Reading<Amount> {
  const trimmed = text.trim()
  const comma = decimalComma.exec(trimmed)
  if (comma) return notUnderstood('write the decimal with a point', comma[0].replace(',', '.') + trimmed.slice(comma[0].length))
  const asMixed = mixed.exec(trimmed)
  if (asMixed) return fromMixed(asMixed, trimmed)
  const asDecimal = decimal.exec(trimmed)
  if (!asDecimal) return notUnderstood(trimmed === '' ? 'nothing is written here' : 'it does not start with a number')
  const amount = Number(asDecimal[2]) * signOf(asDecimal[1])
  return understood({ amount, rest: trimmed.slice(asDecimal[0].length).trim() })
}

function fromMixed(match: RegExpExecArray, text: string): Reading<Amount> {
  const [whole, sign, units, above, below, character] = match
  if (below !== undefined && Number(below) === 0) return notUnderstood('a fraction cannot be over zero')
  const part = character !== undefined ? vulgar[character]! : Number(above) / Number(below)
  return understood({ amount: signOf(sign) * (Number(units ?? 0) + part), rest: text.slice(whole.length).trim() })
}

function signOf(sign: string | undefined): number {
  return sign === '-' || sign === '−' ? -1 : 1
}

/** A number without float noise, at most `digits` behind the point. @example printNumber(0.1 + 0.2) // '0.3' */
export function printNumber(value: number, digits = 3): string {
  const rounded = Number(value.toFixed(digits))
  return String(Object.is(rounded, -0) ? 0 : rounded)
}

/**
 * Turns as the trade says them: whole, with quarters or sixths (a flat) as fractions, otherwise decimal.
 *
 * @example printTurns(1.75) // '1 3/4'
 */
export function printTurns(turns: number): string {
  for (const below of [2, 4, 3, 6, 8]) {
    const whole = Math.trunc(turns)
    const above = Math.abs(turns - whole) * below
    const near = Math.round(above)
    if (near === 0 || near === below || Math.abs(above - near) > 1e-6) continue
    return `${whole === 0 ? (turns < 0 ? '-' : '') : `${whole} `}${near}/${below}`
  }
  return printNumber(turns)
}
