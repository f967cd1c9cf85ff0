import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, type Amount, type Outcome, type Result } from '../working/result'
import { readLeverage, type LeverageFacts } from './leverage'

export interface WheelRateFacts {
  springRateNPerMm: Amount | undefined
  preloadMm: Amount | undefined
  leverage: LeverageFacts | undefined
  /** Where in the travel, mm at the wheel from fully extended. */
  wheelMm: number | undefined
}

export interface WheelSpring {
  /** N/mm at the wheel. */
  rate: Result
  /** Vertical force at the wheel, N. */
  force: Result
  /** Shock travel over wheel travel at this place. */
  motionRatio: number
}

/**
 * The rate and the force of a spring as the wheel feels them, at one place of the travel.
 *
 * force = k · (p + s) · s′ ; rate = k · s′² + k · (p + s) · s″, with s(z) the shock travel at wheel travel z.
 * The second term is the spring's force on a leverage that changes: with a constant ratio it is zero, and without it a
 * rising linkage looks softer than it is. `s″` comes out of a measured table and is only as good as that table.
 * Source: derivative of the force; first term as in G. Byrnes, Leverage and Linkages.
 */
export function wheelSpring({ springRateNPerMm, preloadMm, leverage, wheelMm }: WheelRateFacts): Outcome<WheelSpring> {
  const drive = readLeverage(leverage)
  if (isMissing(drive)) return drive
  if (wheelMm === undefined || !(wheelMm >= 0)) return { missing: [say('place in the wheel travel')] }
  const point = drive.at(wheelMm)
  if (!point) return { missing: [say`a leverage table that reaches ${wheelMm} mm of wheel travel`] }
  const from = {
    k: given(say('spring rate'), 'N/mm', springRateNPerMm),
    p: given(say('spring preload'), 'mm', preloadMm),
    s: given(say('shock travel here'), 'mm', point.value),
    m: given(say('motion ratio here (s′)'), '', point.slope),
    c: given(say('change of the motion ratio here (s″)'), '1/mm', point.curvature),
  }
  const assumptions = leverage && 'table' in leverage
    ? [say('a smooth curve through the measured leverage; s″ carries its reading errors')]
    : [say('constant motion ratio, so s″ = 0')]
  const source = say('derivative of the spring’s force at the wheel')
  const rate = derive({
    formula: 'rate = k · m² + k · (p + s) · c', unit: 'N/mm', from,
    by: ({ k, p, s, m, c }) => k * m ** 2 + k * (p + s) * c, assumptions, source,
  })
  const { k, p, s, m } = from
  const force = derive({ formula: 'force = k · (p + s) · m', unit: 'N', from: { k, p, s, m }, by: (v) => v.k * (v.p + v.s) * v.m, assumptions, source })
  if (isMissing(rate)) return rate
  return isMissing(force) ? force : { rate, force, motionRatio: point.slope }
}
