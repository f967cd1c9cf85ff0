import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Measured, Outcome } from '../working/result'
import type { End } from '../sag/loadCase'
import { standardGravity } from './gravity'

/**
 * What the rider adds to one end, in N, from its axle weighed with and without the rider: g · (with − without).
 * Assumes the same stance on the scales as in the readings of sag, and both wheels level.
 * Source: statics.
 */
export function weighedRiderLoad({ withRiderKg, withoutRiderKg }: { withRiderKg: Amount | undefined; withoutRiderKg: Amount | undefined }): Outcome {
  return derive({
    formula: 'load = g · (with − without)', unit: 'N',
    from: {
      g: given(say('standard gravity'), 'm/s²', standardGravity),
      with: given(say('this axle’s weight with the rider'), 'kg', withRiderKg),
      without: given(say('this axle’s weight without the rider'), 'kg', withoutRiderKg),
    },
    by: (kg) => kg.g * (kg.with - kg.without),
    assumptions: [say('the rider sits on the scales as for the readings of sag'), say('the scales are taken as exact')],
    source: say('statics: difference of two weighings'),
  })
}

/** How a rider's weight is taken to fall on the ends where nobody weighed it; ±0.1 either way. From memory, no source. */
export const assumedRiderShare: Record<End, Measured> = {
  front: { value: 0.4, u: 0.1 / Math.sqrt(3) },
  rear: { value: 0.6, u: 0.1 / Math.sqrt(3) },
}

/**
 * What the rider adds to one end, in N, from the rider's mass and the share that falls on it: g · mass · share.
 * `share` of 0 to 1; without one the stated assumption is taken, with an uncertainty that is honest about it.
 */
export function sharedRiderLoad({ end, riderKg, share }: { end: End; riderKg: Amount | undefined; share?: Amount }): Outcome {
  return derive({
    formula: 'load = g · mass · share', unit: 'N',
    from: {
      g: given(say('standard gravity'), 'm/s²', standardGravity),
      mass: given(say('rider’s kitted mass'), 'kg', riderKg),
      share: given(say`share of the rider on the ${say(end)}`, '', share ?? assumedRiderShare[end]),
    },
    by: ({ g, mass, share: part }) => g * mass * part,
    unless: ({ share: part }) => (part >= 0 && part <= 1 ? undefined : say('a share between 0 and 1')),
    assumptions: share === undefined
      ? [say`${assumedRiderShare[end].value * 100} ± 10 % of the rider on the ${say(end)}, an assumption without a source: weigh both axles with and without to know`]
      : [],
    source: say('statics'),
  })
}
