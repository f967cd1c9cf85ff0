import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/** Damped frequency in Hz from the natural one: fn · √(1 − ratio²); `naturalFrequency` the other way round. Source: S. S. Rao, Mechanical Vibrations. */
export function dampedFromNatural({ naturalHz, ratio }: { naturalHz: Amount | undefined; ratio: Amount | undefined }): Outcome {
  return derive({
    formula: 'fd = fn · √(1 − ratio²)', unit: 'Hz',
    from: { fn: given(say('natural frequency'), 'Hz', naturalHz), ratio: given(say('damping ratio'), '', ratio) },
    by: ({ fn, ratio: z }) => fn * Math.sqrt(1 - z * z),
    unless: ({ ratio: z }) => (z >= 0 && z < 1 ? undefined : say('a damping ratio below 1')),
    source: 'S. S. Rao, Mechanical Vibrations',
  })
}
