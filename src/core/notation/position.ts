import { say } from '../words/say'
import { longestAmountText, printNumber, printTurns, readAmount } from './amount'
import { notUnderstood, understood, type Reading } from './reading'
import { nearest } from '../nearest'
import { findUnit, units, type Unit } from './units'

/** The end an adjuster is counted from: `closed` is fully in (counted out), `open` is fully backed off (counted in). */
export type End = 'closed' | 'open'

/** Where an adjuster stands, as it was written. Unit and end are absent when the writer left them to the adjuster. */
export interface Position {
  amount: number
  unit?: Unit
  end?: End
}

const ends: Record<string, End> = {
  out: 'closed', 'from closed': 'closed', 'from fully closed': 'closed', 'out from closed': 'closed', 'out from fully closed': 'closed',
  'back from closed': 'closed', 'off closed': 'closed', 'from fully in': 'closed', 'out from fully in': 'closed',
  in: 'open', 'from open': 'open', 'from fully open': 'open', 'in from open': 'open', 'in from fully open': 'open',
  'from fully out': 'open', 'in from fully out': 'open', 'from backed off': 'open', 'from fully backed off': 'open', 'in from fully backed off': 'open',
}
const longestEndFirst = Object.keys(ends).sort((a, b) => b.length - a.length)

const stops = new Map<string, Position>([
  ...['closed', 'fully closed', 'fully in', 'all the way in', 'seated'].map((words) => [words, { amount: 0, end: 'closed' }] as const),
  ...['open', 'fully open', 'fully out', 'all the way out', 'backed off', 'fully backed off'].map((words) => [words, { amount: 0, end: 'open' }] as const),
  // The tube's top level with the clamp's: where a fork height is measured from.
  ['flush', { amount: 0, unit: findUnit('mm')! }],
])

const unitAhead = /^(steps?|dial|positions?|numbers?|no\.?|clicks?|turns?|flats?|rings?|lines?|notch) (?=[\d.\-−½¼¾⅓⅔⅙⅚⅛⅜⅝⅞])/i

/**
 * Reads a position in any notation of the trade: `3 clicks out`, `1 3/4 turns in`, `4 flats in`, `3 rings`, `12 mm`,
 * `3 out`, `step 4`, `closed`, or a bare `3`. What is not said stays open: the adjuster decides.
 *
 * `in` is the direction, never the inch, which is written `inch`; pass `inchAllowed` for a thing that has no ends.
 */
export function readPosition(text: string, inchAllowed = false): Reading<Position> {
  if (text.length > longestAmountText) return notUnderstood(say('this is too long for a position'))
  const words = text.trim().replace(/\s+/g, ' ')
  const stop = stops.get(words.toLowerCase())
  if (stop) return understood({ ...stop })
  // `+2` is what one changes, not where it stands; read as a position it would be wrong without a sign of it.
  if (words.startsWith('+')) return notUnderstood(say('write where it stands, not by how much it changed'))
  const ahead = unitAhead.exec(words)
  const number = readAmount(ahead ? words.slice(ahead[0].length) : words)
  if (number.value === undefined) return number
  const { amount, rest } = number.value
  return ahead ? readAfterUnit(amount, ahead[1]!, rest) : readUnitAndEnd(amount, rest, inchAllowed)
}

/** `step 4`, `dial 3`, `click 5 out`: only a direction may follow. */
function readAfterUnit(amount: number, name: string, rest: string): Reading<Position> {
  const plain = name.toLowerCase().replace('.', '')
  const unit = findUnit(/^positions?$/.test(plain) ? 'step' : plain === 'numbers' ? 'number' : plain)!
  const end = rest === '' ? undefined : ends[rest.toLowerCase()]
  if (rest !== '' && !end) return notUnderstood(say`‘${rest}’ is no direction known here`)
  return understood(end ? { amount, unit, end } : { amount, unit })
}

function readUnitAndEnd(amount: number, rest: string, inchAllowed: boolean): Reading<Position> {
  if (rest === '') return understood({ amount })
  if (inchAllowed && rest.toLowerCase() === 'in') return understood({ amount, unit: findUnit('inch')! })
  const end = findEnd(rest)
  const unitText = end ? rest.slice(0, rest.length - end.text.length).trim() : rest
  if (unitText === '') return understood({ amount, end: end!.end })
  const unit = findUnit(unitText)
  if (!unit) return notUnderstood(say`‘${unitText}’ is no unit or direction known here`, guess(amount, unitText, end?.end))
  return understood(end ? { amount, unit, end: end.end } : { amount, unit })
}

function findEnd(rest: string): { text: string; end: End } | undefined {
  const lower = rest.toLowerCase()
  const found = longestEndFirst.find((name) => lower === name || lower.endsWith(` ${name}`))
  return found === undefined ? undefined : { text: found, end: ends[found]! }
}

/** What was probably meant by a misspelt unit or direction. */
function guess(amount: number, unitText: string, end: End | undefined): string | undefined {
  const meant = nearest(unitText, units.flatMap((each) => each.spellings).filter((name) => name.length > 2))
  if (meant) return printPosition(end ? { amount, unit: findUnit(meant)!, end } : { amount, unit: findUnit(meant)! })
  if (end) return undefined
  const words = unitText.split(' ')
  const direction = nearest(words.pop()!, ['out'])
  const unit = words.length === 0 ? undefined : findUnit(words.join(' '))
  if (!direction || (words.length > 0 && !unit)) return undefined
  return printPosition(unit ? { amount, unit, end: 'closed' } : { amount, end: 'closed' })
}

/**
 * Writes a position so that `readPosition` reads the same again, as far as three digits show it.
 *
 * @example printPosition({ amount: 1.75, unit: findUnit('turns')!, end: 'open' }) // '1 3/4 turns in'
 */
export function printPosition(position: Position): string {
  const { amount, unit, end } = position
  const direction = end === undefined ? '' : end === 'closed' ? ' out' : ' in'
  if (!unit) return printNumber(amount) + direction
  if (unit.symbol === 'dial') return `dial ${printNumber(amount)}${direction}`
  if (unit.symbol === 'steps') return `step ${printNumber(amount)}${direction}`
  const number = unit.dimension === 'turn' ? printTurns(amount) : printNumber(amount)
  return `${number} ${nameFor(number, unit)}${direction}`
}

/** One click, half a turn; two clicks, 1 1/2 turns. */
function nameFor(number: string, unit: Unit): string {
  const single = /^-?(1|\d\/\d)$/.test(number) && ['click', 'turn', 'mark'].includes(unit.dimension)
  return single ? unit.symbol.slice(0, -1) : unit.symbol
}
