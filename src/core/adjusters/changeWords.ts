import { printNumber, printTurns } from '../notation/amount'
import type { Adjuster } from './adjuster'

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
  const size = Math.abs(by)
  const number = adjuster.counts.symbol === 'turns' ? printTurns(size) : printNumber(size)
  const counted = ['clicks', 'turns', 'flats', 'rings', 'lines', 'steps'].includes(adjuster.counts.symbol)
  const unit = counted && size <= 1 && (size === 1 || /^\d+\/\d+$/.test(number)) ? adjuster.counts.symbol.slice(0, -1) : adjuster.counts.symbol
  if (adjuster.end === undefined) return `${by > 0 ? '+' : '−'}${number} ${unit}`
  const outward = (adjuster.end === 'closed') === by > 0
  return `${number} ${unit} ${outward ? 'out' : 'in'}`
}

/** A change in the trade's words. @example changeWords(rebound, 2) // '2 clicks out: less rebound damping' */
export function changeWords(adjuster: Adjuster, by: number): string {
  const { control } = adjuster
  return `${movementWords(adjuster, by)}: ${meansOf(adjuster, by) === 'more' ? control.more : control.less}`
}
