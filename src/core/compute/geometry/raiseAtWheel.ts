import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * How far a longer shock raises the rear, vertical at the wheel, mm: change of length / MR.
 * Assumes one motion ratio, shock travel over wheel travel, over the change. Source: definition of the ratio.
 * @example raiseAtWheel({ shockLongerMm: 4, motionRatio: 0.5 }) // 8 mm
 */
export function raiseAtWheel({ shockLongerMm, motionRatio }: { shockLongerMm: Amount | undefined; motionRatio: Amount | undefined }): Outcome {
  return derive({
    formula: 'raise = longer / m', unit: 'mm',
    from: { longer: given(say('change of shock length'), 'mm', shockLongerMm), m: given(say('motion ratio, shock to wheel'), '', motionRatio) },
    by: ({ longer, m }) => longer / m,
    unless: ({ m }) => (m > 0 ? undefined : say('a motion ratio above zero')),
    assumptions: [say('the motion ratio is the same over the change')],
    source: say('definition of the motion ratio'),
  })
}
