import assert from 'node:assert/strict'
import fc from 'fast-check'
import { inv, multiply, transpose, type Matrix } from 'mathjs'
import { savitzkyGolay, type Fit } from '../../../../src/core/logs/series/savitzkyGolay'
import { Velocity } from '../../../../src/core/logs/series/velocity'
import { near } from '../../compute/near'

const spacingS = 0.005
const x = [2.0, 2.5, 3.7, 6.1, 9.8, 14.9, 20.7, 26.0, 29.6, 30.8, 29.5, 26.1, 21.3, 16.2, 11.8, 8.6, 6.4]

function velocities(values: readonly number[], fit: Fit, pieces: readonly number[] = [values.length], spacing = spacingS): number[] {
  const found: number[] = []
  const velocity = new Velocity(fit, spacing, (some, count) => found.push(...some.subarray(0, count)))
  let at = 0
  for (const piece of [...pieces, values.length]) {
    velocity.push(Float64Array.from(values), Math.min(at, values.length), Math.min(at + piece, values.length))
    at += piece
  }
  velocity.finish()
  return found
}

function allNear(found: readonly number[], expected: readonly number[], tolerance: number): void {
  assert.equal(found.length, expected.length)
  expected.forEach((value, at) => near(found[at], value, tolerance, `at ${at}`))
}

/** The slope of the least-squares polynomial through these values at a place, by the normal equations in mathjs. */
function fittedSlope(values: readonly number[], order: number, at: number): number {
  const design = values.map((_, sample) => Array.from({ length: order + 1 }, (_, power) => sample ** power))
  const coefficients = multiply(multiply(inv(multiply(transpose(design), design)), transpose(design)), [...values]) as unknown as number[] | Matrix
  const list = (Array.isArray(coefficients) ? coefficients : coefficients.valueOf()) as number[]
  return list.reduce((slope, coefficient, power) => (power === 0 ? slope : slope + power * coefficient * at ** (power - 1)), 0)
}

describe('savitzkyGolay', () => {
  it('Savitzky and Golay 1964: the weights of their tables', () => {
    allNear([...savitzkyGolay({ points: 5, order: 2 }, 1)], [-2, -1, 0, 1, 2].map((weight) => weight / 10), 1e-14)
    allNear([...savitzkyGolay({ points: 7, order: 2 }, 1)], [-3, -2, -1, 0, 1, 2, 3].map((weight) => weight / 28), 1e-14)
    allNear([...savitzkyGolay({ points: 7, order: 3 }, 1)], [22, -67, -58, 0, 58, 67, -22].map((weight) => weight / 252), 1e-14)
    allNear([...savitzkyGolay({ points: 5, order: 2 }, 0)], [-3, 12, 17, 12, -3].map((weight) => weight / 35), 1e-14)
  })
})

describe('Velocity', () => {
  // scipy.signal.savgol_filter(x, points, order, deriv=1, delta=0.005), mode interp, scipy 1.17.1.
  it('scipy’s savgol_filter: 5 points of order 2, ends included', () => {
    allNear(velocities(x, { points: 5, order: 2 }), [-50.2857143, 166.857143, 384, 618, 856, 1014, 1014, 814, 448, 2, -426, -748, -906, -890, -748, -548, -348], 1e-6)
  })

  it('scipy’s savgol_filter: 7 points of order 2 and of order 3 (printed to 9 digits)', () => {
    allNear(velocities(x, { points: 7, order: 2 }), [-72.8571429, 158.571429, 390, 621.428571, 809.285714, 917.142857, 891.428571, 712.857143, 400, 13.5714286, -362.142857, -648.571429, -799.285714, -812.857143, -739.52381, -666.190476, -592.857143], 6e-6)
    allNear(velocities(x, { points: 7, order: 3 }), [-50.6349206, 164.126984, 385.555556, 613.650794, 898.730159, 1107.69841, 1132.53968, 911.190476, 493.333333, -9.76190476, -486.587302, -843.015873, -1009.28571, -964.52381, -826.190476, -557.857143, -159.52381], 6e-6)
  })

  it('gives the slope of a ramp exactly, ends included, also over thousands of samples (property of the fit)', () => {
    for (const fit of [{ points: 5, order: 2 }, { points: 15, order: 2 }, { points: 9, order: 4 }]) {
      for (const value of velocities(Array.from({ length: 9000 }, (_, at) => 7 + at * 1.25), fit)) near(value, 250, 1e-6)
    }
  })

  it('is the slope of the polynomial that mathjs fits, wherever the samples were cut', () => {
    const fit = fc.constantFrom({ points: 5, order: 2 }, { points: 9, order: 2 }, { points: 7, order: 3 }, { points: 9, order: 4 })
    fc.assert(fc.property(fit, fc.array(fc.integer({ min: 0, max: 12000 }), { minLength: 9, maxLength: 40 }), fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 5 }), ({ points, order }, counts, pieces) => {
      const values = counts.map((count) => count / 100)
      const half = (points - 1) / 2
      const expected = values.map((_, at) => {
        const from = Math.max(0, Math.min(values.length - points, at - half))
        return fittedSlope(values.slice(from, from + points), order, at - from) / spacingS
      })
      allNear(velocities(values, { points, order }, pieces), expected, 1e-5)
    }), { numRuns: 60 })
  })

  it('has none for a stretch of fewer samples than points, and counts them', () => {
    const found: number[] = []
    const velocity = new Velocity({ points: 5, order: 2 }, 1, (some, count) => found.push(...some.subarray(0, count)))
    velocity.push(Float64Array.of(1, 2, 3, 4), 0, 4)
    velocity.finish()
    velocity.push(Float64Array.of(10, 8, 6, 4, 2), 0, 5)
    velocity.finish()
    assert.equal(velocity.without, 4)
    allNear(found, [-2, -2, -2, -2, -2], 1e-12)
  })

  // D14: 150 mm over 1024 counts is 0.146484 mm; one count from one sample to the next at 100 Hz is 14.648 mm/s.
  it('arithmetic: a count of a 10-bit sensor is 14.6 mm/s in raw differences, and three tenths of that at 5 points', () => {
    const count = 150 / 1024
    near(count, 0.146484, 1e-6)
    near(count / 0.01, 14.648, 1e-3)
    const step = [0, 0, 0, 0, 0, count, count, count, count, count]
    near(Math.max(...velocities(step, { points: 5, order: 2 }, [10], 0.01)), (count / 0.01) * 0.3, 1e-9)
  })
})
