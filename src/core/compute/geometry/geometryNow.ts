import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, reasons, type Amount, type Outcome, type Result } from '../working/result'
import { attitude, type Attitude } from './attitude'
import { steeringProblem } from './trail'

/** The figures of a machine and what moved since; anything of `moved` left out is taken as not moved. */
export interface GeometryFacts {
  rakeDeg: Amount | undefined
  offsetMm: Amount | undefined
  wheelbaseMm: Amount | undefined
  frontRadiusMm: Amount | undefined
  rearRadiusMm: Amount | undefined
  moved?: {
    /** Tubes up through the clamps since the figures were taken, mm. */
    forkUpMm?: Amount
    /** Sag of the fork along its tubes beyond that of the figures, mm. */
    frontSagMm?: Amount
    /** Sag of the rear beyond that of the figures, vertical at the wheel, mm. */
    rearSagMm?: Amount
    /** Rear raised by its adjuster, vertical at the wheel, mm: see `raiseAtWheel`. */
    rearRaisedMm?: Amount
    /** Tyre radii now, where they differ, mm. */
    frontRadiusMm?: Amount
    rearRadiusMm?: Amount
  }
}

export interface GeometryNow {
  rakeDeg: Result
  trailMm: Result
  normalTrailMm: Result
  wheelbaseMm: Result
  /** Turn of the chassis against the figures, nose up above zero. */
  pitchDeg: Result
}

const axles = 'x = L − (t + f) · sin ε, y = R + (t + f) · cos ε − (r + s − h), D² = x² + y²'
const pitch = `pitch = asin((F − H) / D) − atan2(y, x), ${axles}`

const formulas: Record<keyof Attitude, string> = {
  pitchDeg: pitch,
  rakeDeg: `rake = ε + pitch, ${pitch}`,
  trailMm: `trail = (F · sin(ε + pitch) − d) / cos(ε + pitch), ${pitch}`,
  normalTrailMm: `normal = F · sin(ε + pitch) − d, ${pitch}`,
  wheelbaseMm: `wheelbase = √(D² − (F − H)²), ${axles}`,
}

/**
 * Rake, trail, normal trail and wheelbase as the machine stands now, exact in the plane, each with its working.
 *
 * What moves: fork height, sag at both ends, ride height and tyre radii; see `attitude` for the model and what it assumes.
 * The figures hold for a stance; whoever calls says how far the machine is from that one. Where manuals do not say, the
 * figures are usually taken with both ends extended or with the bike on its own weight: an assumption to show.
 */
export function geometryNow(facts: GeometryFacts): Outcome<GeometryNow> {
  const moved = facts.moved ?? {}
  const from = {
    ε: given(say('rake of the figures'), '°', facts.rakeDeg),
    d: given(say('offset of the axle from the steering axis'), 'mm', facts.offsetMm),
    L: given(say('wheelbase of the figures'), 'mm', facts.wheelbaseMm),
    R: given(say('front tyre radius of the figures'), 'mm', facts.frontRadiusMm),
    r: given(say('rear tyre radius of the figures'), 'mm', facts.rearRadiusMm),
    t: given(say('tubes up through the clamps'), 'mm', moved.forkUpMm ?? 0),
    f: given(say('front sag along the tubes'), 'mm', moved.frontSagMm ?? 0),
    s: given(say('rear sag'), 'mm', moved.rearSagMm ?? 0),
    h: given(say('rear raised'), 'mm', moved.rearRaisedMm ?? 0),
    F: given(say`front tyre radius ${moved.frontRadiusMm === undefined ? say('of the figures') : say('now')}`, 'mm', moved.frontRadiusMm ?? facts.frontRadiusMm),
    H: given(say`rear tyre radius ${moved.rearRadiusMm === undefined ? say('of the figures') : say('now')}`, 'mm', moved.rearRadiusMm ?? facts.rearRadiusMm),
  }
  const result = (key: keyof Attitude) => derive({
    formula: formulas[key], unit: key.endsWith('Deg') ? '°' : 'mm', from,
    by: (v) => attitudeOf(v, moved)[key],
    unless: (v) => steeringProblem(v) ?? (Math.min(v.L, v.r, v.F, v.H) > 0 ? undefined : say('a wheelbase and tyre radii above zero')),
    assumptions: [say('the figures hold without the movements shown'), say('the rear axle moves vertically'), say('level ground, steering straight, tyres without width')],
    source: say('plane geometry: both axles moved in the chassis, chassis turned until both tyres touch'),
  })
  const now = { rakeDeg: result('rakeDeg'), trailMm: result('trailMm'), normalTrailMm: result('normalTrailMm'), wheelbaseMm: result('wheelbaseMm'), pitchDeg: result('pitchDeg') }
  return Object.values(now).some(isMissing) ? { missing: reasons(...Object.values(now)) } : (now as GeometryNow)
}

function attitudeOf(v: Record<'ε' | 'd' | 'L' | 'R' | 'r' | 't' | 'f' | 's' | 'h' | 'F' | 'H', number>, moved: NonNullable<GeometryFacts['moved']>): Attitude {
  return attitude(
    { rakeDeg: v.ε, offsetMm: v.d, wheelbaseMm: v.L, frontRadiusMm: v.R, rearRadiusMm: v.r },
    {
      frontShorterMm: v.t + v.f,
      rearSunkMm: v.s - v.h,
      // A tyre that did not change is one number, and must move as one when its uncertainty is propagated.
      ...(moved.frontRadiusMm === undefined ? {} : { frontRadiusMm: v.F }),
      ...(moved.rearRadiusMm === undefined ? {} : { rearRadiusMm: v.H }),
    },
  )
}
