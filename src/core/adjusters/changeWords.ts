import { printNumber, printTurns } from '../notation/amount'
import type { Unit } from '../notation/units'
import { say } from '../words/say'
import type { Adjuster } from './adjuster'
import { unitWord, unitWords } from './unitWords'

/** Whether a change of the own count by this much means more or less of what the adjuster controls. */
export function meansOf(adjuster: Adjuster, by: number): 'more' | 'less' {
  // Counting out from closed, a higher count is further open: less. Counting in from open, a higher count is more.
  const higherIs = adjuster.end === 'closed' ? 'less' : adjuster.end === 'open' ? 'more' : adjuster.higherIs
  return (by > 0) === (higherIs === 'more') ? 'more' : 'less'
}

/**
 * A movement in the adjuster's own unit with its direction.
 *
 * @example movementWords(rebound, 2) // '2 clicks out'
 */
export function movementWords(adjuster: Adjuster, by: number): string {
  const amount = amountWords(adjuster.counts, Math.abs(by))
  if (adjuster.end === undefined) return `${by > 0 ? '+' : '−'}${amount}`
  const outward = (adjuster.end === 'closed') === by > 0
  return outward ? say`${amount} out` : say`${amount} in`
}

/** So much of a count in words. @example amountWords(turns, 0.75) // '3/4 turn' */
export function amountWords(unit: Unit, size: number): string {
  const { symbol } = unit
  const number = symbol === 'turns' ? printTurns(size) : printNumber(size)
  const counted = ['clicks', 'turns', 'flats', 'rings', 'lines', 'steps'].includes(symbol)
  const isSingular = counted && size <= 1 && (size === 1 || /^\d+\/\d+$/.test(number))
  return `${number} ${isSingular ? unitWord(unit) : unitWords(unit)}`
}

/** A change in the trade's words. @example changeWords(rebound, 2) // '2 clicks out: less rebound damping' */
export function changeWords(adjuster: Adjuster, by: number): string {
  const { control } = adjuster
  return `${movementWords(adjuster, by)}: ${meansOf(adjuster, by) === 'more' ? say(control.more) : say(control.less)}`
}
