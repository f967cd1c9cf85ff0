import { phrase, say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { cosDeg, sinDeg } from './degrees'

/** The steering end of a machine on level ground. */
export interface SteeringFacts {
  /** Steering axis from the vertical, degrees. */
  rakeDeg: Amount | undefined
  /** Front axle to steering axis, square to it, mm: offset of the clamps plus any lead of the axle, never the clamps alone. */
  offsetMm: Amount | undefined
  /** Rolling radius of the front tyre, mm; the radius, not the diameter. */
  frontRadiusMm: Amount | undefined
}

/** Trail in mm from plain numbers: (R·sin ε − d) / cos ε. */
export function trailOf(rakeDeg: number, offsetMm: number, frontRadiusMm: number): number {
  return normalTrailOf(rakeDeg, offsetMm, frontRadiusMm) / cosDeg(rakeDeg)
}

/** Normal trail in mm from plain numbers: R·sin ε − d. */
export function normalTrailOf(rakeDeg: number, offsetMm: number, frontRadiusMm: number): number {
  return frontRadiusMm * sinDeg(rakeDeg) - offsetMm
}

const source = 'Meijaard, Papadopoulos, Ruina & Schwab, Proceedings of the Royal Society A 463 (2007); plane trigonometry'
const assumptions = [phrase('machine upright on level ground, tyre without width')]

const facts = ({ rakeDeg, offsetMm, frontRadiusMm }: SteeringFacts) => ({
  ε: given(say('rake'), '°', rakeDeg),
  d: given(say('offset of the axle from the steering axis'), 'mm', offsetMm),
  R: given(say('front tyre radius'), 'mm', frontRadiusMm),
})

/** A rake that a steering axis can have, and a tyre; the plausible range is for the rules to judge. */
export function steeringProblem({ ε, R }: { ε: number; R: number }): string | undefined {
  if (!(Math.abs(ε) < 90)) return say('a rake below 90°')
  return R > 0 ? undefined : say('a tyre radius above zero')
}

/**
 * Trail on the ground, mm: how far the contact point lies behind where the steering axis meets the ground.
 * trail = (R·sin ε − d) / cos ε
 * @example trail({ rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300 }) // 100.73 mm
 */
export function trail(steering: SteeringFacts): Outcome {
  return derive({
    formula: 'trail = (R · sin ε − d) / cos ε', unit: 'mm', from: facts(steering),
    by: ({ ε, d, R }) => trailOf(ε, d, R), unless: steeringProblem, assumptions, source,
  })
}

/** Normal (mechanical) trail, mm: the distance of the contact point from the steering axis. normal trail = R·sin ε − d */
export function normalTrail(steering: SteeringFacts): Outcome {
  return derive({
    formula: 'normal = R · sin ε − d', unit: 'mm', from: facts(steering),
    by: ({ ε, d, R }) => normalTrailOf(ε, d, R), unless: steeringProblem, assumptions, source,
  })
}

/**
 * Wheel flop, mm: trail · sin ε · cos ε, how far the front comes down for a given steer to the first order.
 * Source: the encyclopaedia article ‘Bicycle and motorcycle geometry’.
 */
export function wheelFlop({ rakeDeg, trailMm }: { rakeDeg: Amount | undefined; trailMm: Amount | undefined }): Outcome {
  return derive({
    formula: 'flop = trail · sin ε · cos ε', unit: 'mm',
    from: { ε: given(say('rake'), '°', rakeDeg), trail: given(say('trail'), 'mm', trailMm) },
    by: (v) => v.trail * sinDeg(v.ε) * cosDeg(v.ε),
    source: 'encyclopaedia article ‘Bicycle and motorcycle geometry’',
  })
}

/** Rolling radius of a tyre, mm, from how far it rolls in some turns: distance / (2π · turns). Source: circumference of a circle. */
export function radiusFromRollOut({ distanceMm, turns }: { distanceMm: Amount | undefined; turns: number | undefined }): Outcome {
  return derive({
    formula: 'R = distance / (2 · π · turns)', unit: 'mm',
    from: { distance: given(say('distance rolled'), 'mm', distanceMm), turns: given(say('turns of the wheel'), '', turns) },
    by: ({ distance, turns: n }) => distance / (2 * Math.PI * n),
    unless: ({ turns: n }) => (n > 0 ? undefined : say('turns above zero')),
    assumptions: [say('rolled straight, loaded as ridden')],
    source: say('circumference of a circle'),
  })
}

/** Rake in degrees from a head angle from the horizontal, and the other way round. */
export function complementDeg(angleDeg: number): number {
  return 90 - angleDeg
}
