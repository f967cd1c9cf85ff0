import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, type Outcome } from '../working/result'
import { wheelSpring } from '../leverage/wheelRate'
import type { LeverageFacts } from '../leverage/leverage'

/**
 * The mean rate at the wheel between two places of the travel with a measured leverage, N/mm:
 * n · (force there − force here) / (there − here), each force k · (p + s) · s′.
 *
 * It is what two sags see of a linkage: `impliedWheelRate` is a mean over the same stretch.
 * Missing where the table does not reach, or both places are one. Source: definition of a mean slope.
 */
export function shockMeanWheelRate({ springRateNPerMm, preloadMm, leverage, springs, fromMm, toMm }: {
  springRateNPerMm: number | undefined
  preloadMm: number | undefined
  leverage: LeverageFacts | undefined
  springs: number
  fromMm: number
  toMm: number
}): Outcome {
  const here = wheelSpring({ springRateNPerMm, preloadMm, leverage, wheelMm: fromMm })
  const there = wheelSpring({ springRateNPerMm, preloadMm, leverage, wheelMm: toMm })
  if (isMissing(here)) return here
  if (isMissing(there)) return there
  return derive({
    formula: 'rate = n · (F2 − F1) / (z2 − z1)', unit: 'N/mm',
    from: {
      n: given(say('springs'), '', springs),
      F1: given(say('force of a spring at the wheel, bike alone'), 'N', here.force.value),
      F2: given(say('force of a spring at the wheel, rider aboard'), 'N', there.force.value),
      z1: given(say('bike sag'), 'mm', fromMm), z2: given(say('rider sag'), 'mm', toMm),
    },
    by: ({ n, F1, F2, z1, z2 }) => (n * (F2 - F1)) / (z2 - z1),
    unless: ({ z1, z2 }) => (z2 > z1 ? undefined : say('a rider sag above the bike’s')),
    assumptions: here.force.working.assumptions,
    source: say('mean slope of the spring’s force at the wheel'),
  })
}
