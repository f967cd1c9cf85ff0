import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

export interface Lifting {
  wheelbaseMm: Amount | undefined
  frontRadiusMm: Amount | undefined
  /** The front one by default: both wheels alike. */
  rearRadiusMm?: Amount
  /** Level, on the front scale and on the rear one, kg. */
  frontLevelKg: Amount | undefined
  rearLevelKg: Amount | undefined
  /** On the front scale with the rear lifted, kg. */
  frontLiftedKg: Amount | undefined
  /** How far the rear axle was lifted, mm. */
  liftMm: Amount | undefined
}

/**
 * Height of the centre of mass above the ground in mm, from lifting the rear and reading the front scale again.
 *
 * With x = L·rear/W behind the front axle, Y = R_rear − R_front and A the angle turned about the front axle:
 * height = R + (x − (rear lifted / W) · (L − Y·tan A)) / tan A. With equal wheels it is R + L·ΔW / (W·tan A).
 *
 * Assumes a locked suspension, a front wheel free to roll, the machine upright. Small lifts make a small difference and a
 * large uncertainty: three lifts or more are advised by ISO 10392.
 * Source: moments about the front contact; ISO 9129 for motorcycles.
 */
export function massHeight(lifting: Lifting): Outcome {
  return derive({
    formula: 'height = R + (x − (W − N) / W · (L − (r − R) · tan A)) / tan A, W = front + rear, x = L · rear / W, lift = L · sin A − (r − R) · (1 − cos A)',
    unit: 'mm',
    from: {
      L: given(say('wheelbase'), 'mm', lifting.wheelbaseMm),
      R: given(say('front tyre radius'), 'mm', lifting.frontRadiusMm),
      r: given(say('rear tyre radius'), 'mm', lifting.rearRadiusMm ?? lifting.frontRadiusMm),
      front: given(say('front axle, level'), 'kg', lifting.frontLevelKg),
      rear: given(say('rear axle, level'), 'kg', lifting.rearLevelKg),
      N: given(say('front axle, rear lifted'), 'kg', lifting.frontLiftedKg),
      lift: given(say('lift of the rear axle'), 'mm', lifting.liftMm),
    },
    by: (v) => heightOf(v),
    unless: (v) => (v.front > 0 && v.rear > 0 ? (v.lift > 0 && v.lift < v.L ? undefined : say('a lift above zero and below the wheelbase')) : say('axle weights above zero')),
    assumptions: [say('suspension locked, front wheel free to roll, machine upright')],
    source: 'moments about the front contact; ISO 9129:2008',
  })
}

function heightOf({ L, R, r, front, rear, N, lift }: Record<'L' | 'R' | 'r' | 'front' | 'rear' | 'N' | 'lift', number>): number {
  const total = front + rear
  const rise = r - R
  const angle = Math.asin((lift + rise) / Math.hypot(L, rise)) - Math.atan2(rise, L)
  const tan = Math.tan(angle)
  const behindFront = (L * rear) / total
  return R + (behindFront - ((total - N) / total) * (L - rise * tan)) / tan
}
