import { cosDeg, sinDeg, toDegrees } from './degrees'
import { normalTrailOf, trailOf } from './trail'

/** A machine as its figures stand: on level ground, both wheels in one plane. */
export interface PlaneGeometry {
  rakeDeg: number
  /** Front axle to steering axis, square to it. */
  offsetMm: number
  wheelbaseMm: number
  frontRadiusMm: number
  rearRadiusMm: number
}

/** How far the machine now stands from those figures. All of it may be left out. */
export interface AttitudeChange {
  /** Front axle moved towards the head along the steering axis, mm: tubes up through the clamps, and sag of the fork. */
  frontShorterMm?: number
  /** Rear axle moved up against the chassis, mm: sag of the rear; below zero for a rear that was raised. */
  rearSunkMm?: number
  /** Tyre radii now, where they differ. */
  frontRadiusMm?: number
  rearRadiusMm?: number
}

export interface Attitude {
  rakeDeg: number
  trailMm: number
  normalTrailMm: number
  wheelbaseMm: number
  /** How far the chassis turned, nose up above zero, degrees: what was added to the rake. */
  pitchDeg: number
}

/**
 * The geometry after its ends moved, exact in the plane and not for small angles.
 *
 * The front axle slides along the steering axis and the rear axle rises, both in the frame of the chassis; the chassis
 * then turns until both tyres touch level ground again:
 * sin(angle of the axle line after) = (R_front − R_rear) / distance of the axles; the difference is the pitch.
 *
 * Assumes a rigid chassis, a rear axle that moves square to the ground the figures were taken on (for a swingarm the arc
 * is left out), tyres without width, and steering straight ahead.
 * Numbers that cannot stand on two wheels come out as NaN; `geometryNow` turns that into a reason.
 * Source: plane geometry.
 */
export function attitude(base: PlaneGeometry, change: AttitudeChange): Attitude {
  const { frontShorterMm = 0, rearSunkMm = 0, frontRadiusMm = base.frontRadiusMm, rearRadiusMm = base.rearRadiusMm } = change
  const ahead = base.wheelbaseMm - frontShorterMm * sinDeg(base.rakeDeg)
  const up = base.frontRadiusMm + frontShorterMm * cosDeg(base.rakeDeg) - (base.rearRadiusMm + rearSunkMm)
  const between = Math.hypot(ahead, up)
  const upNow = frontRadiusMm - rearRadiusMm
  const pitchDeg = toDegrees(Math.asin(upNow / between) - Math.atan2(up, ahead))
  const rakeDeg = base.rakeDeg + pitchDeg
  return {
    rakeDeg,
    trailMm: trailOf(rakeDeg, base.offsetMm, frontRadiusMm),
    normalTrailMm: normalTrailOf(rakeDeg, base.offsetMm, frontRadiusMm),
    wheelbaseMm: Math.sqrt(between ** 2 - upNow ** 2),
    pitchDeg,
  }
}
