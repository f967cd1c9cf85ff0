import { printNumber, printTurns } from '../notation/amount'
import type { Position } from '../notation/position'
import { say } from '../words/say'
import type { Adjuster } from './adjuster'
import { ownPosition } from './convert'
import { unitWord, unitWords } from './unitWords'

/**
 * A position for a person to read, in the language that is spoken. `printPosition` is the same for a file.
 *
 * @example positionWords({ amount: 3, unit: findUnit('clicks')!, end: 'closed' }) // '3 clicks out', '3 Klicks heraus'
 */
export function positionWords({ amount, unit, end }: Position): string {
  const words = unit ? unitAmount(amount, unit) : printNumber(amount)
  if (end === undefined) return words
  return end === 'closed' ? say`${words} out` : say`${words} in`
}

/** Where an adjuster stands, in its own count. */
export function standsAt(count: number, adjuster: Adjuster): string {
  return positionWords(ownPosition(count, adjuster))
}

function unitAmount(amount: number, unit: NonNullable<Position['unit']>): string {
  if (unit.symbol === 'dial') return say`dial ${printNumber(amount)}`
  if (unit.symbol === 'steps') return say`step ${printNumber(amount)}`
  const number = unit.dimension === 'turn' ? printTurns(amount) : printNumber(amount)
  return `${number} ${/^-?(1|\d\/\d)$/.test(number) ? unitWord(unit) : unitWords(unit)}`
}
