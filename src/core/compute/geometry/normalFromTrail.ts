import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { cosDeg } from './degrees'

/** Normal trail in mm from rake and trail alone: trail · cos ε. Source: plane trigonometry. @example at 26° and 106 mm 95.27 mm */
export function normalFromTrail({ rakeDeg, trailMm }: { rakeDeg: Amount | undefined; trailMm: Amount | undefined }): Outcome {
  return derive({
    formula: 'normal = trail · cos ε', unit: 'mm',
    from: { trail: given(say('trail'), 'mm', trailMm), ε: given(say('rake'), '°', rakeDeg) },
    by: (v) => v.trail * cosDeg(v.ε),
    source: say('plane trigonometry'),
  })
}
