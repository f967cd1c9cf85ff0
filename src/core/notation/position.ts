import { printNumber, printTurns, readAmount } from './amount'
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
  out: 'closed', 'out from closed': 'closed', 'from closed': 'closed', 'back from closed': 'closed', 'off closed': 'closed',
  in: 'open', 'in from open': 'open', 'from open': 'open', 'in from fully open': 'open', 'out from fully closed': 'closed',
}
const stops: Record<string, Position> = {
  closed: { amount: 0, end: 'closed' }, 'fully closed': { amount: 0, end: 'closed' }, 'fully in': { amount: 0, end: 'closed' },
  open: { amount: 0, end: 'open' }, 'fully open': { amount: 0, end: 'open' }, 'fully out': { amount: 0, end: 'open' },
  'backed off': { amount: 0, end: 'open' }, 'fully backed off': { amount: 0, end: 'open' },
}

/**
 * Reads a position in any notation of the trade: `3 clicks out`, `1 3/4 turns in`, `4 flats in`, `3 rings`, `12 mm`,
 * `3 out`, `step 4`, `closed`, or a bare `3`. What is not said stays open: the adjuster decides.
 *
 * `in` is the direction, never the inch, which is written `inch`; pass `inchAllowed` for a thing that has no ends.
 */
export function readPosition(text: string, inchAllowed = false): Reading<Position> {
  const words = text.trim().replace(/\s+/g, ' ')
  const stop = stops[words.toLowerCase()]
  if (stop && Object.hasOwn(stops, words.toLowerCase())) return understood(stop)
  const ahead = /^(step|dial|position|number|no\.?|click|ring|line)s? (?=[\d.])/i.exec(words)
  if (ahead) {
    const name = ahead[1]!.toLowerCase()
    const again = readPosition(`${words.slice(ahead[0].length)} ${name === 'position' ? 'step' : name.replace('.', '')}`, inchAllowed)
    if (again.value) return again
  }
  const number = readAmount(words)
  if (number.value === undefined) return number
  return readUnitAndEnd(number.value.amount, number.value.rest, inchAllowed)
}

function readUnitAndEnd(amount: number, rest: string, inchAllowed: boolean): Reading<Position> {
  if (rest === '') return understood({ amount })
  if (inchAllowed && rest.toLowerCase() === 'in') return understood({ amount, unit: findUnit('inch')! })
  const end = findEnd(rest)
  const unitText = end ? rest.slice(0, rest.length - end.text.length).trim() : rest
  if (unitText === '') return understood({ amount, end: end!.end })
  const unit = findUnit(unitText)
  if (!unit) {
    const meant = nearest(unitText, units.flatMap((each) => each.spellings).filter((name) => name.length > 2))
    const suggestion = meant && `${printNumber(amount, 6)} ${findUnit(meant)!.symbol}${end ? ` ${end.end === 'closed' ? 'out' : 'in'}` : ''}`
    return notUnderstood(`‘${unitText}’ is no unit or direction known here`, suggestion)
  }
  return understood(end ? { amount, unit, end: end.end } : { amount, unit })
}

function findEnd(rest: string): { text: string; end: End } | undefined {
  const lower = rest.toLowerCase()
  const found = Object.keys(ends)
    .filter((name) => lower === name || lower.endsWith(` ${name}`))
    .sort((a, b) => b.length - a.length)[0]
  return found === undefined ? undefined : { text: found, end: ends[found]! }
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
  if (unit.symbol === 'dial') return `dial ${printNumber(amount)}`
  if (unit.symbol === 'steps') return `step ${printNumber(amount)}`
  const number = unit.symbol === 'turns' ? printTurns(amount) : printNumber(amount)
  const one = Math.abs(amount) === 1 && /^(clicks|turns|flats|rings|lines)$/.test(unit.symbol)
  return `${number} ${one ? unit.symbol.slice(0, -1) : unit.symbol}${direction}`
}
