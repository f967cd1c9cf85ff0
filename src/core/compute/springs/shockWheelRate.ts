import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * The rate of the rear springs at the wheel with one motion ratio over the travel, N/mm: n · k · m².
 *
 * `springs` n counts them: 2 for twin shocks. For a leverage that changes see `wheelSpring`, which has the second term.
 * Source: G. Byrnes, Leverage and Linkages.
 * @example shockWheelRate({ springRateNPerMm: 95, motionRatio: 0.45, springs: 1 }) // 19.2375 N/mm
 */
export function shockWheelRate({ springRateNPerMm, motionRatio, springs }: {
  springRateNPerMm: Amount | undefined
  motionRatio: Amount | undefined
  springs: number
}): Outcome {
  return derive({
    formula: 'rate = n · k · m²', unit: 'N/mm',
    from: {
      n: given(say('springs'), '', springs),
      k: given(say('spring rate of the shock'), 'N/mm', springRateNPerMm),
      m: given(say('motion ratio, shock to wheel'), '', motionRatio),
    },
    by: ({ n, k, m }) => n * k * m ** 2,
    unless: ({ k, m }) => (k > 0 && m > 0 ? undefined : say('a spring rate and a motion ratio above zero')),
    assumptions: [say('constant motion ratio')],
    source: 'G. Byrnes, Leverage and Linkages',
  })
}
