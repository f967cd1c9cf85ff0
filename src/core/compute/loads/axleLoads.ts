import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, reasons, type Amount, type Outcome, type Result } from '../working/result'

export interface AxleLoads {
  totalKg: Result
  /** Share of the total on the front axle, percent. */
  frontShare: Result
  /** Horizontal distance of the centre of mass from the front and from the rear contact point, mm. */
  behindFrontMm: Result
  aheadOfRearMm: Result
}

/**
 * Weight distribution and the place of the centre of mass along the machine, from the scales under both wheels.
 *
 * behind front = L · rear / (front + rear). Assumes both scales level and at the same height.
 * Source: moments about a contact point.
 */
export function axleLoads({ frontKg, rearKg, wheelbaseMm }: {
  frontKg: Amount | undefined
  rearKg: Amount | undefined
  wheelbaseMm: Amount | undefined
}): Outcome<AxleLoads> {
  const front = given(say('weight on the front axle'), 'kg', frontKg)
  const rear = given(say('weight on the rear axle'), 'kg', rearKg)
  const L = given(say('wheelbase'), 'mm', wheelbaseMm)
  const common = { assumptions: [say('scales level and at one height')], source: say('moments about a contact point') }
  const unless = (v: { front: number; rear: number }) => (Math.min(v.front, v.rear) >= 0 && v.front + v.rear > 0 ? undefined : say('axle weights above zero'))
  const loads = {
    totalKg: derive({ formula: 'total = front + rear', unit: 'kg', from: { front, rear }, by: (v) => v.front + v.rear, unless, ...common }),
    frontShare: derive({ formula: 'share = 100 · front / (front + rear)', unit: '%', from: { front, rear }, by: (v) => (100 * v.front) / (v.front + v.rear), unless, ...common }),
    behindFrontMm: derive({ formula: 'distance = L · rear / (front + rear)', unit: 'mm', from: { L, front, rear }, by: (v) => (v.L * v.rear) / (v.front + v.rear), unless, ...common }),
    aheadOfRearMm: derive({ formula: 'distance = L · front / (front + rear)', unit: 'mm', from: { L, front, rear }, by: (v) => (v.L * v.front) / (v.front + v.rear), unless, ...common }),
  }
  return Object.values(loads).some(isMissing) ? { missing: reasons(...Object.values(loads)) } : (loads as AxleLoads)
}
