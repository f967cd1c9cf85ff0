import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Share of the rider that the front axle carries, 0 to 1: (front with − front without) / rider's mass.
 * Below 0 or above 1 it is still told: it says that a weighing or the stance was off. Source: statics.
 */
export function riderFrontShare({ frontWithKg, frontWithoutKg, riderKg }: {
  frontWithKg: Amount | undefined
  frontWithoutKg: Amount | undefined
  riderKg: Amount | undefined
}): Outcome {
  return derive({
    formula: 'share = (with − without) / rider', unit: '',
    from: {
      with: given(say('front axle with the rider'), 'kg', frontWithKg),
      without: given(say('front axle without the rider'), 'kg', frontWithoutKg),
      rider: given(say('rider’s kitted mass'), 'kg', riderKg),
    },
    by: (kg) => (kg.with - kg.without) / kg.rider,
    unless: (kg) => (kg.rider > 0 ? undefined : say('a rider’s mass above zero')),
    assumptions: [say('rider in the riding position, feet on the pegs')],
    source: say('statics'),
  })
}

/** A mass and where it is, mm from any one line. */
export interface PlacedMass {
  massKg: number
  atMm: number
}

/** Where the centre of several masses is, mm from the same line: Σ m·x / Σ m. `undefined` without mass. Source: statics. */
export function combinedCentre(masses: readonly PlacedMass[]): number | undefined {
  const total = masses.reduce((sum, { massKg }) => sum + massKg, 0)
  return total > 0 ? masses.reduce((sum, { massKg, atMm }) => sum + massKg * atMm, 0) / total : undefined
}
