import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { standardGravity } from './gravity'

/**
 * What hangs on the springs of one end, in N: g · (axle weight − unsprung mass).
 *
 * The unsprung mass is the wheel, tyre, brake and what moves with them; about half of a swingarm or fork. It cancels in
 * the rate from two sags, but not in a preload. Source: statics.
 */
export function sprungLoad({ axleKg, unsprungKg }: { axleKg: Amount | undefined; unsprungKg: Amount | undefined }): Outcome {
  return derive({
    formula: 'load = g · (axle − unsprung)', unit: 'N',
    from: {
      g: given(say('standard gravity'), 'm/s²', standardGravity),
      axle: given(say('weight on this axle'), 'kg', axleKg),
      unsprung: given(say('unsprung mass of this end'), 'kg', unsprungKg),
    },
    by: ({ g, axle, unsprung }) => g * (axle - unsprung),
    unless: ({ axle, unsprung }) => (axle > unsprung ? undefined : say('an axle weight above the unsprung mass')),
    source: say('statics'),
  })
}
