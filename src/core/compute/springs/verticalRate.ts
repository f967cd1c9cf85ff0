import { say } from '../../words/say'
import { cosDeg } from '../geometry/degrees'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * The vertical rate of a fork from the one that two sags along its tubes imply, N/mm: rate / cos ε.
 * The axle rises cos ε for every mm along the tubes. Source: plane trigonometry.
 */
export function verticalRate({ rateAlongTubesNPerMm, rakeDeg }: { rateAlongTubesNPerMm: Amount | undefined; rakeDeg: Amount | undefined }): Outcome {
  return derive({
    formula: 'vertical = rate / cos ε', unit: 'N/mm',
    from: { rate: given(say('rate along the tubes'), 'N/mm', rateAlongTubesNPerMm), ε: given(say('rake'), '°', rakeDeg) },
    by: (v) => v.rate / cosDeg(v.ε),
    unless: (v) => (Math.abs(v.ε) < 90 ? undefined : say('a rake below 90°')),
    source: say('plane trigonometry'),
  })
}
