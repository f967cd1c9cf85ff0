import { say } from '../words/say'
import { notUnderstood, understood, type Reading } from './reading'

const glyphs: Record<string, number> = {
  '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅙': 1 / 6, '⅚': 5 / 6, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8,
}
/** The fractions that the trade divides by. Anything else over a stroke is more likely `21 of 24`. */
const denominators = [2, 3, 4, 6, 8, 16, 32, 64]
// Every part is bounded, so that no text can make a match slow.
const stroke = /^([+\-−]?)(?:(\d{1,12})(?: - | |-))?(\d{1,4}) ?[/⁄] ?(\d{1,4})(?![\d/.,])/
const anyGlyph = Object.keys(glyphs).join('')
const glyph = new RegExp(`^([+\\-−]?)(?:(\\d{1,12})[ -]?)?([${anyGlyph}])(?![\\d/.,${anyGlyph}])`)
const decimal = /^([+\-−]?)(\d{1,12}(?:\.\d{0,20})?|\.\d{1,20})(e[+-]?\d{1,2})?(?! ?[/⁄]|[\d.,])/i
const comma = /^([+\-−]?\d{1,12}),(\d{1,12})(?![\d,.])/
const ofTotal = /^(\d{1,6}) ?of ?\d{1,6}(?!\d)/i

/** Longer than anything that is written into one cell; what is longer is refused before it is looked at. */
export const longestAmountText = 120

/** A number at the start of a text, and the text behind it. */
export interface Amount {
  amount: number
  rest: string
}

/**
 * Reads the number at the start of a text as the trade writes it: `3`, `1.75`, `1 3/4`, `1-3/4`, `1¾`, `¾`.
 * A decimal comma is refused, with the point as the suggestion, because a file must read alike everywhere;
 * so is `21/24` or `21 of 24`, which names a total that belongs to the adjuster.
 *
 * @example readAmount('1 3/4 turns in') // { value: { amount: 1.75, rest: 'turns in' } }
 */
export function readAmount(text: string): Reading<Amount> {
  if (text.length > longestAmountText) return notUnderstood(say('this is too long for a number'))
  const words = text.trim().replace(/\s+/g, ' ')
  const withGlyph = glyph.exec(words)
  if (withGlyph) return amountOf(withGlyph, glyphs[withGlyph[3]!]!, words)
  const withStroke = stroke.exec(words)
  if (withStroke) return fromStroke(withStroke, words)
  const total = ofTotal.exec(words)
  if (total) return countOfTotal(total[1]!, words.slice(total[0].length))
  const asDecimal = decimal.exec(words)
  if (!asDecimal) return noNumber(words)
  const amount = Number(asDecimal[2]! + (asDecimal[3] ?? '')) * signOf(asDecimal[1])
  return understood({ amount, rest: words.slice(asDecimal[0].length).trim() })
}

function amountOf(match: RegExpExecArray, part: number, words: string): Reading<Amount> {
  const amount = signOf(match[1]) * (Number(match[2] ?? 0) + part)
  return understood({ amount, rest: words.slice(match[0].length).trim() })
}

function fromStroke(match: RegExpExecArray, words: string): Reading<Amount> {
  const above = Number(match[3])
  const below = Number(match[4])
  if (below === 0) return notUnderstood(say('a fraction cannot be over zero'))
  if (denominators.includes(below) && above < below) return amountOf(match, above / below, words)
  if (match[2] === undefined) return countOfTotal(match[1]! + match[3]!, words.slice(match[0].length))
  return notUnderstood(say`${above}/${below} is no fraction in use: halves, thirds, quarters, sixths and eighths are`)
}

function countOfTotal(count: string, rest: string): Reading<Amount> {
  return notUnderstood(say('write the count alone: the total belongs to the adjuster, as its range'), `${count} ${rest.trim()}`.trim())
}

function noNumber(words: string): Reading<Amount> {
  if (words === '') return notUnderstood(say('nothing is written here'))
  const withComma = comma.exec(words)
  if (withComma) {
    // `1,400` may be a thousand and more or a little over one: guessing could be out by a factor of a thousand.
    if (withComma[2]!.length === 3) return notUnderstood(say('write the number without a comma'))
    return notUnderstood(say('write the decimal with a point'), `${withComma[1]}.${withComma[2]}${words.slice(withComma[0].length)}`)
  }
  if (/^[+\-−]?\.?\d/.test(words)) return notUnderstood(say('this is no number we can read'))
  return notUnderstood(say('it does not start with a number'))
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
 * Turns as the trade says them: whole, with halves, quarters, thirds, sixths (a flat) or eighths, otherwise decimal.
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
