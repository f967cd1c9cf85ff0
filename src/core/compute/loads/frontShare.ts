import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Share of the weight that the front axle carries, percent: 100 · front / (front + rear).
 * `whose` names the load case: ‘bike alone’. Source: the scales alone.
 * @example frontShare({ frontKg: 90, rearKg: 110, whose: 'bike alone' }) // 45 %
 */
export function frontShare({ frontKg, rearKg, whose }: { frontKg: Amount | undefined; rearKg: Amount | undefined; whose: string }): Outcome {
  return derive({
    formula: 'share = 100 · front / (front + rear)', unit: '%',
    from: { front: given(say`weight on the front axle, ${whose}`, 'kg', frontKg), rear: given(say`weight on the rear axle, ${whose}`, 'kg', rearKg) },
    by: ({ front, rear }) => (100 * front) / (front + rear),
    unless: ({ front, rear }) => (Math.min(front, rear) >= 0 && front + rear > 0 ? undefined : say('axle weights above zero')),
    assumptions: [say('scales level and at one height')], source: say('share of two weighings'),
  })
}
