import type { Measured } from '../working/result'
import type { SagTarget } from './sagTarget'

export interface SagJudgement {
  where: 'below' | 'within' | 'above'
  /** How far outside the window, mm; 0 inside it. */
  byMm: number
  /** Whether twice the standard uncertainty leaves the judgement as it is; `undefined` without an uncertainty. */
  sure: boolean | undefined
}

/**
 * Where a sag lies against its window; both bounds count as within.
 * The coverage factor of two, about 95 %, is that of JCGM 100:2008, 6.3.3.
 */
export function judgeSag(sagMm: Measured, { lowMm, highMm }: Pick<SagTarget, 'lowMm' | 'highMm'>): SagJudgement {
  const { value, u } = sagMm
  const where = value < lowMm ? 'below' : value > highMm ? 'above' : 'within'
  const byMm = where === 'below' ? lowMm - value : where === 'above' ? value - highMm : 0
  const toNearestBound = Math.min(Math.abs(value - lowMm), Math.abs(value - highMm))
  return { where, byMm, sure: u === undefined ? undefined : toNearestBound >= 2 * u }
}
