import assert from 'node:assert/strict'
import fc from 'fast-check'
import { attitude, type AttitudeChange, type PlaneGeometry } from '../../../../src/core/compute/geometry/attitude'
import { near, nearRelative } from '../near'

const base: PlaneGeometry = { rakeDeg: 24, offsetMm: 30, wheelbaseMm: 1400, frontRadiusMm: 300, rearRadiusMm: 310 }

describe('attitude', () => {
  it('leaves the figures as they are when nothing moved', () => {
    const now = attitude(base, {})
    near(now.rakeDeg, 24, 1e-12)
    near(now.wheelbaseMm, 1400, 1e-9)
    near(now.pitchDeg, 0, 1e-12)
    near(now.trailMm, 100.7295, 1e-4)
  })

  for (const [mm, pitch, trail, wheelbase] of [[5, 0.18721, 99.6042, 1397.94], [10, 0.37497, 98.4785, 1395.9], [20, 0.75211, 96.226, 1391.85]] as const) {
    it(`rigid model (scipy): tubes ${mm} mm up through the clamps turn ${pitch}°, trail ${trail}, wheelbase ${wheelbase} mm`, () => {
      const now = attitude(base, { frontShorterMm: mm })
      near(now.pitchDeg, -pitch, 1e-5)
      near(now.trailMm, trail, 1e-4)
      near(now.wheelbaseMm, wheelbase, 0.01)
      nearRelative((Math.atan((mm * Math.cos((24 * Math.PI) / 180)) / 1400) * 180) / Math.PI, pitch, 0.01)
    })
  }

  // Chassis turned by root finding (scipy.optimize.brentq) and the axis cut with the ground, instead of the closed form.
  const rows: [string, AttitudeChange, number, number, number][] = [
    ['38 mm front and 33 mm rear sag', { frontShorterMm: 38, rearSunkMm: 33 }, 23.9290401525, 100.3026392489, 1384.5326845623],
    ['rear raised 8 mm', { rearSunkMm: -8 }, 23.6725924274, 98.7633850022, 1399.9657138659],
    ['tubes up 5, rear sunk 10 mm, other tyres', { frontShorterMm: 5, rearSunkMm: 10, frontRadiusMm: 296, rearRadiusMm: 318 }, 23.7308131154, 97.3539196614, 1397.878384519],
  ]
  for (const [what, change, rake, trail, wheelbase] of rows) {
    it(`root finding (scipy): ${what} give rake ${rake}°, trail ${trail}, wheelbase ${wheelbase} mm`, () => {
      const now = attitude(base, change)
      near(now.rakeDeg, rake, 1e-9)
      near(now.trailMm, trail, 1e-8)
      near(now.wheelbaseMm, wheelbase, 1e-8)
    })
  }

  for (const [wheelbase, mmPerDegree, degreesPer10] of [[1350, 23.564, 0.4244], [1400, 24.437, 0.4092], [1450, 25.31, 0.3951], [1500, 26.183, 0.382]] as const) {
    it(`trigonometry, wheelbase ${wheelbase} mm: ${mmPerDegree} mm a degree, ${degreesPer10}° for 10 mm at the rear, equal wheels`, () => {
      const even = { ...base, wheelbaseMm: wheelbase, rearRadiusMm: 300 }
      near(-attitude(even, { rearSunkMm: -10 }).pitchDeg, degreesPer10, 1e-3)
      near(-attitude(even, { rearSunkMm: -mmPerDegree }).pitchDeg, 1, 1e-3)
    })
  }

  it('itstillruns: raising the rear decreases rake; so does lowering the front; both decrease trail', () => {
    fc.assert(fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (mm) => {
      const [raised, lowered] = [attitude(base, { rearSunkMm: -mm }), attitude(base, { frontShorterMm: mm })]
      return raised.rakeDeg < 24 && lowered.rakeDeg < 24 && raised.trailMm < attitude(base, {}).trailMm && lowered.trailMm < attitude(base, {}).trailMm
    }))
  })

  it('only changes where wheels are: turned back by the opposite movement', () => {
    fc.assert(fc.property(fc.double({ min: -30, max: 60, noNaN: true }), (mm) => {
      const there = attitude(base, { frontShorterMm: mm })
      const back = attitude({ ...base, rakeDeg: there.rakeDeg, wheelbaseMm: there.wheelbaseMm }, { frontShorterMm: -mm })
      near(back.rakeDeg, 24, 1e-9)
      near(back.wheelbaseMm, 1400, 1e-8)
    }))
  })

  it('is NaN, for the caller to turn into a reason, where no two wheels can stand', () => {
    assert.ok(Number.isNaN(attitude({ ...base, wheelbaseMm: 1 }, { rearRadiusMm: 900 }).rakeDeg))
  })
})
