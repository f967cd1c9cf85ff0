import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Front over rear of one number of the bounce test: damping ratio, damped or natural frequency. 1 means alike.
 * Source: ratio; the trade sets the front first and brings the rear to match, common practice without a source.
 */
export function frontOverRear({ name, unit, front, rear }: { name: string; unit: string; front: Amount | undefined; rear: Amount | undefined }): Outcome {
  return derive({
    formula: 'ratio = front / rear', unit: '',
    from: { front: given(say`${name}, front`, unit, front), rear: given(say`${name}, rear`, unit, rear) },
    by: (v) => v.front / v.rear,
    unless: (v) => (v.rear > 0 ? undefined : say`${name} of the rear above zero`),
    source: say('front against rear, common practice, no source'),
  })
}
