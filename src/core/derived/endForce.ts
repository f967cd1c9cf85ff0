import { readLeverage } from '../compute/leverage/leverage'
import type { End } from '../compute/sag/loadCase'
import { airSpring } from '../compute/springs/airSpring'
import { dualRateForce } from '../compute/springs/dualRate'
import { coilPart, type ForcePart } from '../compute/springs/forceCurve'
import { isMissing, type Outcome } from '../compute/working/result'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { forkAirOf, hasAir } from './airOf'
import { hasStack, stackOf } from './stackOf'
import { forkSpringsOf, leverageOf, shockSpringOf } from './springsFitted'
import { springPreloadOf } from './springPreloadOf'

/** What holds an end up over its travel, N: along the tubes of both fork legs together, at the wheel in the rear. */
export interface EndForce {
  parts: ForcePart[]
  assumptions: string[]
}

/** How a reading of sag takes the air, or a stroke. */
export type Stroke = 'slow' | 'fast'

/**
 * Springs and air of an end as forces over its travel, from fully extended; `forceCurve` makes rows of them. Missing where
 * something of it is not noted, the preload too: without it no force is known, only how it grows.
 */
export function endForceOf(notebook: Notebook, entry: Entry, end: End, stroke: Stroke = 'fast'): Outcome<EndForce> {
  return end === 'front' ? forkForce(notebook, entry, stroke) : shockForce(notebook, entry)
}

function forkForce(notebook: Notebook, entry: Entry, stroke: Stroke): Outcome<EndForce> {
  const springs = springParts(notebook, entry)
  const air = hasAir(notebook) ? airParts(notebook, entry, stroke) : { parts: [], assumptions: [say('springs alone, without the air above the oil')] }
  if (isMissing(springs)) return springs
  if (isMissing(air)) return air
  const parts = [...springs, ...air.parts]
  return parts.length === 0 ? { missing: [say('spring rate of the fork')] } : { parts, assumptions: air.assumptions }
}

function springParts(notebook: Notebook, entry: Entry): Outcome<ForcePart[]> {
  const rates = Object.values(forkSpringsOf(notebook, entry))
  const isStack = rates.length === 0 && hasStack(notebook, 'front')
  if (rates.length === 0 && !isStack) return []
  const preload = springPreloadOf(notebook, entry, 'front')
  if (isMissing(preload)) return preload
  if (!isStack) return [coilPart(rates.reduce((sum, rate) => sum + rate, 0), preload.mm, say('springs'))]
  const stack = stackOf(notebook, 'front')
  return isMissing(stack) ? stack : [{ name: say('spring stacks'), at: (mm) => 2 * dualRateForce(stack, preload.mm + mm) }]
}

function airParts(notebook: Notebook, entry: Entry, stroke: Stroke): Outcome<EndForce> {
  const air = forkAirOf(notebook, entry)
  if (isMissing(air)) return air
  const spring = airSpring({ ...air.leg, exponent: stroke === 'slow' ? 1 : air.exponent })
  if (isMissing(spring)) return spring
  return { parts: [{ name: 'air', at: (mm) => air.legs * spring.at(mm).forceN }], assumptions: air.assumptions }
}

function shockForce(notebook: Notebook, entry: Entry): Outcome<EndForce> {
  const { rateNPerMm, count } = shockSpringOf(notebook, entry)
  const drive = readLeverage(leverageOf(notebook))
  if (isMissing(drive)) return drive
  const preload = springPreloadOf(notebook, entry, 'rear')
  const stack = rateNPerMm === undefined && hasStack(notebook, 'rear') ? stackOf(notebook, 'rear') : undefined
  if (isMissing(preload)) return preload
  if (isMissing(stack)) return stack
  if (rateNPerMm === undefined && !stack) return { missing: [say('spring rate of the shock')] }
  const atShock = (mm: number) => (stack ? dualRateForce(stack, preload.mm + mm) : rateNPerMm! * (preload.mm + mm))
  // Past the end of a measured leverage there is no force that anyone knows: NaN, which a curve leaves out.
  const at = (mm: number) => {
    const point = drive.at(mm)
    return point ? count * atShock(point.value) * point.slope : NaN
  }
  return { parts: [{ name: stack ? say('spring stack') : count === 2 ? say('springs') : say('spring'), at }], assumptions: [] }
}

/** The force of all parts together at a travel, N; `undefined` where it is not known. */
export function totalForce({ parts }: EndForce, mm: number): number | undefined {
  const sum = parts.reduce((total, part) => total + part.at(mm), 0)
  return Number.isFinite(sum) ? sum : undefined
}
