import { say } from '../../words/say'
import { cosDeg } from '../geometry/degrees'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * The rate of each fork spring that gives a rate along the tubes, N/mm: rate · cos ε / legs.
 * `legs` counts those with a spring. Source: statics of a sliding guide, as in `forkRateAlongTubes`.
 */
export function forkSpringFor({ rateAlongTubesNPerMm, rakeDeg, legs, withAir = false }: {
  rateAlongTubesNPerMm: Amount | undefined
  rakeDeg: Amount | undefined
  legs: 1 | 2
  /** Whether the air above the oil has been taken into account. */
  withAir?: boolean
}): Outcome {
  return derive({
    formula: 'spring = rate · cos ε / legs', unit: 'N/mm',
    from: {
      rate: given(say('rate along the tubes'), 'N/mm', rateAlongTubesNPerMm),
      ε: given(say('rake'), '°', rakeDeg),
      legs: given(say('legs with a spring'), '', legs),
    },
    by: (values) => (values.rate * cosDeg(values.ε)) / values.legs,
    assumptions: withAir ? [say('what the air above the oil carries is taken off')] : [say('springs alone, without the air above the oil')],
    source: say('statics of a sliding guide'),
  })
}

/**
 * The rate of a shock spring that gives a rate at the wheel, N/mm: rate / MR², MR = shock travel / wheel travel.
 * A ratio told the other way round, wheel to shock, is to be inverted first.
 * Source: G. Byrnes, Leverage and Linkages.
 * @example shockSpringFor({ wheelRateNPerMm: 18, motionRatio: 0.5 }) // 72 N/mm
 */
export function shockSpringFor({ wheelRateNPerMm, motionRatio }: { wheelRateNPerMm: Amount | undefined; motionRatio: Amount | undefined }): Outcome {
  return derive({
    formula: 'spring = rate / m²', unit: 'N/mm',
    from: { rate: given(say('wheel rate'), 'N/mm', wheelRateNPerMm), m: given(say('motion ratio, shock to wheel'), '', motionRatio) },
    by: ({ rate, m }) => rate / m ** 2,
    unless: ({ m }) => (m > 0 ? undefined : say('a motion ratio above zero')),
    assumptions: [say('the motion ratio is the same over both sags')],
    source: 'G. Byrnes, Leverage and Linkages (the spring must be leverage squared as stiff)',
  })
}
