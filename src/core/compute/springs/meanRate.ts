import { say } from '../../words/say'
import { cosDeg } from '../geometry/degrees'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * The mean rate that two sags see of springs and air that are no straight line, N/mm: (F2 − F1) / (z2 − z1), and in a
 * fork that is read along its tubes over the cosine of the rake, as in `forkRateAlongTubes`.
 * Source: definition of a mean slope.
 */
export function meanRate({ force1N, force2N, fromMm, toMm, rakeDeg, assumptions }: {
  force1N: number | undefined
  force2N: number | undefined
  fromMm: Amount | undefined
  toMm: Amount | undefined
  /** Only for a fork. */
  rakeDeg?: { value: Amount | undefined }
  assumptions: readonly string[]
}): Outcome {
  return derive<string>({
    formula: `rate = (F2 − F1) / (${rakeDeg ? '(z2 − z1) · cos ε' : 'z2 − z1'})`, unit: 'N/mm',
    from: {
      F1: given(say('force of the springs, bike alone'), 'N', force1N), F2: given(say('force of the springs, rider aboard'), 'N', force2N),
      z1: given(say('bike sag'), 'mm', fromMm), z2: given(say('rider sag'), 'mm', toMm),
      ...(rakeDeg ? { ε: given(say('rake'), '°', rakeDeg.value) } : {}),
    },
    by: (v) => (v.F2! - v.F1!) / (v.z2! - v.z1!) / (rakeDeg ? cosDeg(v.ε!) : 1),
    unless: (v) => (v.z2! > v.z1! ? undefined : say('a rider sag above the bike’s')),
    assumptions, source: say('mean slope of the force between both sags'),
  })
}
