import { say } from '../../words/say'
import { cosDeg } from '../geometry/degrees'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * What of a rate along the tubes is left for the springs once the air above the oil has done its part, N/mm:
 * rate − (A2 − A1) / (z2 − z1) / cos ε, the air taken at its mean between both sags. Source: forces side by side.
 */
export function rateLessAir({ rateNPerMm, airForce1N, airForce2N, fromMm, toMm, rakeDeg }: {
  rateNPerMm: Amount | undefined
  airForce1N: number | undefined
  airForce2N: number | undefined
  fromMm: number | undefined
  toMm: number | undefined
  rakeDeg: Amount | undefined
}): Outcome {
  return derive({
    formula: 'springs = rate − (A2 − A1) / (z2 − z1) / cos ε', unit: 'N/mm',
    from: {
      rate: given(say('rate along the tubes'), 'N/mm', rateNPerMm), A1: given(say('force of the air at the bike’s sag'), 'N', airForce1N), A2: given(say('force of the air at the rider’s sag'), 'N', airForce2N),
      z1: given(say('bike sag'), 'mm', fromMm), z2: given(say('rider sag'), 'mm', toMm), ε: given(say('rake'), '°', rakeDeg),
    },
    by: (v) => v.rate - (v.A2 - v.A1) / (v.z2 - v.z1) / cosDeg(v.ε),
    unless: (v) => (v.z2 > v.z1 ? undefined : say('a rider sag above the bike’s')),
    assumptions: [say('the air read slowly, at its mean between both sags')], source: say('forces side by side add up'),
  })
}
