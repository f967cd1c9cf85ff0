import assert from 'node:assert/strict'
import fc from 'fast-check'
import { complementDeg, normalTrail, normalTrailOf, radiusFromRollOut, trail, trailOf, wheelFlop } from '../../../../src/core/compute/geometry/trail'
import { toDegrees } from '../../../../src/core/compute/geometry/degrees'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('trail and normalTrail', () => {
  it('peterverdone, Mechanical Trail: R·sin(90° − head angle) − offset is the same number from a rake', () => {
    const headAngle = 66
    near(valueOf(normalTrail({ rakeDeg: complementDeg(headAngle), offsetMm: 30, frontRadiusMm: 300 })), 300 * Math.sin(((90 - headAngle) * Math.PI) / 180) - 30, 1e-12)
  })

  it('Meijaard et al. 2007 benchmark bicycle: λ π/10, R 350 mm, offset 32.0714267 mm give trail 80 and normal trail 76.0845213 mm', () => {
    const steering = { rakeDeg: 18, offsetMm: 32.0714267, frontRadiusMm: 350 }
    near(valueOf(trail(steering)), 80, 1e-6)
    near(valueOf(normalTrail(steering)), 76.0845213, 1e-6)
  })

  it('BicycleParameters Fisher, measured: head angle 71.1 ± 0.2°, offset 38.5 ± 1 mm, 29.044 m in 14 turns give 72.3512958768 ± 1.63 mm', () => {
    const radius = valueOf(radiusFromRollOut({ distanceMm: 29_044, turns: 14 }))
    near(radius, 330.178297654, 1e-8)
    near(((90 - 71.1) * Math.PI) / 180, 0.329867228627, 1e-12)
    const result = get(trail({ rakeDeg: { value: complementDeg(71.1), u: 0.2 }, offsetMm: { value: 38.5, u: 1 }, frontRadiusMm: radius }))
    near(result.value, 72.3512958768, 1e-9)
    near(result.u, 1.63, 0.005)
  })

  it('R package velo, calc_trail(700, 58, 73): 46.3556166 mm', () => {
    near(valueOf(trail({ rakeDeg: 17, offsetMm: 58, frontRadiusMm: 350 })), 46.3556166, 1e-6)
  })

  it('trap, bikeforums: the wheel’s diameter in the place of its radius must not pass', () => {
    assert.ok(Math.abs(valueOf(trail({ rakeDeg: 17, offsetMm: 58, frontRadiusMm: 700 })) - 46.3556166) > 50)
  })

  for (const [rake, ground, normal] of [[24, 100.7295, 92.021], [23.5, 97.7305, 89.6247], [23, 94.7516, 87.2193]] as const) {
    it(`plane trigonometry, R 300, d 30: ${rake}° gives trail ${ground} and normal trail ${normal} mm`, () => {
      near(trailOf(rake, 30, 300), ground, 1e-4)
      near(normalTrailOf(rake, 30, 300), normal, 1e-4)
    })
  }

  it('derivative (R − d·sin ε) / cos² ε: 6.0187 mm a degree at 24°', () => {
    const slope = trailOf(24.5, 30, 300) - trailOf(23.5, 30, 300)
    nearRelative(slope, 6.0187, 0.01)
    const epsilon = (24 * Math.PI) / 180
    nearRelative((trailOf(24.0001, 30, 300) - trailOf(23.9999, 30, 300)) / 2e-4, (300 - 30 * Math.sin(epsilon)) / Math.cos(epsilon) ** 2 / toDegrees(1), 1e-6)
  })

  it('J. Parker, dirtrider: more rake, more trail; more offset, less trail; larger tyre, more trail', () => {
    fc.assert(fc.property(number(15, 40), number(0, 60), number(250, 350), number(0.05, 4), (rake, offset, radius, more) =>
      trailOf(rake + more, offset, radius) > trailOf(rake, offset, radius)
      && trailOf(rake, offset + more, radius) < trailOf(rake, offset, radius)
      && trailOf(rake, offset, radius + more) > trailOf(rake, offset, radius)))
  })

  it('J. Parker, dirtrider: the offset is named as the axle’s from the steering axis, not the clamps’ alone', () => {
    assert.deepEqual(missingOf(trail({ rakeDeg: 24, offsetMm: undefined, frontRadiusMm: 300 })), ['offset of the axle from the steering axis'])
  })

  it('has none for a rake of a right angle or a wheel without radius', () => {
    assert.equal(missingOf(trail({ rakeDeg: 90, offsetMm: 30, frontRadiusMm: 300 })).length, 1)
    assert.equal(missingOf(normalTrail({ rakeDeg: 24, offsetMm: 30, frontRadiusMm: 0 })).length, 1)
  })
})

describe('wheelFlop', () => {
  it('encyclopaedia Bicycle and motorcycle geometry, benchmark bicycle: trail 80 mm, head angle 72° is 23.5114101 mm', () => {
    near(valueOf(wheelFlop({ rakeDeg: 18, trailMm: 80 })), 23.5114101, 1e-6)
  })
})

describe('radiusFromRollOut', () => {
  it('needs turns', () => assert.equal(missingOf(radiusFromRollOut({ distanceMm: 1000, turns: 0 })).length, 1))
})
