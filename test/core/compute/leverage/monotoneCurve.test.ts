import assert from 'node:assert/strict'
import fc from 'fast-check'
import { monotoneCurve, type Point } from '../../../../src/core/compute/leverage/monotoneCurve'
import { near } from '../near'

const measured: Point[] = [[0, 0], [20, 9.1], [40, 18.4], [60, 28], [80, 37.9], [100, 48.2], [130, 64.6]]

describe('monotoneCurve', () => {
  // Made with gsl_interp_steffen of the GNU Scientific Library 2.7.1. Its outermost pieces start from the plain secant,
  // ours from the parabola through three points, so the comparison is of the inner pieces.
  const gsl = [
    [20.5, 9.33003203125, 0.4601296875, 0.00026875], [33, 15.11485625, 0.46641875, 0.0007375],
    [47.25, 21.8453359375, 0.4779375, 0.00075], [71, 33.40106875, 0.49526875, 0.0009125], [99.9, 48.1472409933, 0.527513533333, 0.00152933333333],
  ] as const
  for (const [x, value, slope, curvature] of gsl) {
    it(`GNU Scientific Library, Steffen interpolation at ${x}: ${value}`, () => {
      const point = monotoneCurve(measured)!.at(x)!
      near(point.value, value, 1e-9)
      near(point.slope, slope, 1e-11)
      near(point.curvature, curvature, 1e-13)
    })
  }

  const kinked = [[12, 1, 0, 0], [17, 1, 0, 0], [22, 1.184, 0.176, 0.076], [28, 3.176, 0.416, 0.004]] as const
  for (const [x, value, slope, curvature] of kinked) {
    it(`GNU Scientific Library, Steffen interpolation of a table with a flat, at ${x}: ${value}`, () => {
      const point = monotoneCurve([[0, 0], [10, 1], [20, 1], [30, 4], [40, 9]])!.at(x)!
      near(point.value, value, 1e-12)
      near(point.slope, slope, 1e-12)
      near(point.curvature, curvature, 1e-12)
    })
  }

  it('meets a parabola exactly, ends included: value, slope and curvature', () => {
    const s = (z: number) => 0.42 * z + 0.00045 * z * z
    const curve = monotoneCurve([0, 15, 40, 60, 95, 130].map((z): Point => [z, s(z)]))!
    for (const z of [0, 3, 14, 15, 50, 100, 129, 130]) {
      const point = curve.at(z)!
      near(point.value, s(z), 1e-12)
      near(point.slope, 0.42 + 0.0009 * z, 1e-12)
      near(point.curvature, 0.0009, 1e-12)
    }
  })

  it('is a straight line through two points', () => {
    const point = monotoneCurve([[0, 1], [10, 6]])!.at(4)!
    near(point.value, 3, 1e-12)
    near(point.slope, 0.5, 1e-12)
    near(point.curvature, 0, 1e-12)
  })

  const tables = fc.array(fc.tuple(fc.double({ min: 0.5, max: 30, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true })), { minLength: 2, maxLength: 12 })
    .map((steps) => steps.reduce<Point[]>((points, [dx, dy]) => [...points, [points.at(-1)![0] + dx, points.at(-1)![1] + dy]], [[0, 0]]))

  it('passes through every point', () => {
    fc.assert(fc.property(tables, (points) => {
      const curve = monotoneCurve(points)!
      for (const [x, y] of points) near(curve.at(x)!.value, y, 1e-9)
    }))
  })

  it('never falls where the points rise', () => {
    fc.assert(fc.property(tables, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
      const curve = monotoneCurve(points)!
      return curve.at(share * curve.to)!.slope >= -1e-9
    }))
  })

  it('has a slope and a curvature that are those of its values', () => {
    const curve = monotoneCurve(measured)!
    for (const x of [7, 33, 71, 120]) {
      const [before, here, after] = [curve.at(x - 1e-3)!, curve.at(x)!, curve.at(x + 1e-3)!]
      near((after.value - before.value) / 2e-3, here.slope, 1e-8)
      near((after.slope - before.slope) / 2e-3, here.curvature, 1e-9)
    }
  })

  it('guesses nothing beyond its ends', () => {
    const curve = monotoneCurve(measured)!
    assert.equal(curve.at(-0.1), undefined)
    assert.equal(curve.at(130.1), undefined)
    assert.equal(curve.at(NaN), undefined)
  })

  it('is undefined for points that are too few, fall back in x or are no numbers', () => {
    assert.equal(monotoneCurve([[0, 0]]), undefined)
    assert.equal(monotoneCurve([[0, 0], [10, 5], [10, 6]]), undefined)
    assert.equal(monotoneCurve([[0, 0], [10, NaN]]), undefined)
  })
})
