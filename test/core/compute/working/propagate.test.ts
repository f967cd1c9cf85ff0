import assert from 'node:assert/strict'
import fc from 'fast-check'
import { derivative, evaluate } from 'mathjs/number'
import { propagate } from '../../../../src/core/compute/working/propagate'
import { near, nearRelative } from '../near'
import { seededNormal } from './seededNormal'

describe('propagate', () => {
  it('adds independent uncertainties by their squares', () => {
    near(propagate(([a, b]) => a! - b!, [{ value: 5, u: 3 }, { value: 2, u: 4 }])?.u, 5, 1e-12)
  })

  it('takes a number without uncertainty as exact', () => {
    const spread = propagate(([a, b]) => a! * b!, [{ value: 5, u: 0.1 }, { value: 2 }])
    near(spread?.u, 0.2, 1e-12)
    assert.equal(spread?.contributions[1], 0)
  })

  it('signs each contribution by the way it moves the result', () => {
    const { contributions } = propagate(([a, b]) => a! - 2 * b!, [{ value: 5, u: 3 }, { value: 2, u: 4 }])!
    near(contributions[0], 3, 1e-12)
    near(contributions[1], -8, 1e-12)
  })

  it('is undefined when no input has an uncertainty', () => {
    assert.equal(propagate(([a]) => a!, [{ value: 1 }]), undefined)
  })

  it('is undefined when the formula leaves its domain within one uncertainty', () => {
    assert.equal(propagate(([a]) => Math.sqrt(a!), [{ value: 1, u: 2 }]), undefined)
  })

  it('JCGM 100:2008, H.1 end gauge: l = 50.000 838 mm with u = 32 nm, of which 25, 9.7, 2.9 and 16.6 nm', () => {
    const endGauge = ([ls, d, alpha, theta, dAlpha, dTheta]: readonly number[]) => ls! + d! - ls! * (dAlpha! * theta! + alpha! * dTheta!)
    const inputs = [
      { value: 50.000623, u: 25e-6 }, { value: 215e-6, u: 9.7e-6 }, { value: 11.5e-6, u: 1.2e-6 },
      { value: -0.1, u: 0.41 }, { value: 0, u: 0.58e-6 }, { value: 0, u: 0.029 },
    ]
    near(endGauge(inputs.map((input) => input.value)), 50.000838, 5e-7)
    const spread = propagate(endGauge, inputs)
    near(spread!.u * 1e6, 32, 0.5)
    const nm = spread!.contributions.map((part) => Math.abs(part) * 1e6)
    for (const [place, expected] of [25, 9.7, 0, 0, 2.9, 16.6].entries()) near(nm[place], expected, 0.1, `contribution ${place}`)
  })

  it('JCGM 100:2008, H.2 resistance and reactance, from memory: correlated V, I and φ give u(R) = 0.071, u(X) = 0.295, u(Z) = 0.236 Ω', () => {
    const inputs = [{ value: 4.999, u: 0.0032 }, { value: 19.661e-3, u: 0.0095e-3 }, { value: 1.04446, u: 0.00075 }]
    const correlations = [{ between: [0, 1], r: -0.36 }, { between: [0, 2], r: 0.86 }, { between: [1, 2], r: -0.65 }] as const
    const cases = [
      [([V, I, phi]: readonly number[]) => (V! / I!) * Math.cos(phi!), 127.732, 0.071],
      [([V, I, phi]: readonly number[]) => (V! / I!) * Math.sin(phi!), 219.847, 0.295],
      [([V, I]: readonly number[]) => V! / I!, 254.26, 0.236],
    ] as const
    for (const [by, value, u] of cases) {
      near(by(inputs.map((input) => input.value)), value, 0.002)
      near(propagate(by, inputs, correlations)?.u, u, 0.002)
    }
  })

  it('agrees with symbolic derivatives of an independent library (mathjs)', () => {
    const formula = 'W / (B - R) * sin(e) + sqrt(W)'
    const inputs = { W: { value: 450, u: 3 }, B: { value: 125, u: 0.4 }, R: { value: 100, u: 0.4 }, e: { value: 0.42, u: 0.002 } }
    const symbols = Object.keys(inputs) as (keyof typeof inputs)[]
    const scope = Object.fromEntries(symbols.map((symbol) => [symbol, inputs[symbol].value]))
    const expected = Math.hypot(...symbols.map((symbol) => derivative(formula, symbol).evaluate({ ...scope }) * inputs[symbol].u))
    const by = (values: readonly number[]) => evaluate(formula, Object.fromEntries(symbols.map((symbol, place) => [symbol, values[place]])))
    nearRelative(propagate(by, Object.values(inputs))?.u, expected, 5e-4)
  })

  it('agrees with a seeded Monte Carlo run for the rate from two sags (JCGM 101)', () => {
    const rate = ([load, bike1, bike2, rider1, rider2]: readonly number[]) => load! / ((bike1! + bike2!) / 2 - (rider1! + rider2!) / 2)
    const inputs = [{ value: 450, u: 9 }, { value: 128, u: 0.577 }, { value: 122, u: 0.577 }, { value: 104, u: 0.577 }, { value: 96, u: 0.577 }]
    const normal = seededNormal(20260418)
    const draws = Array.from({ length: 40_000 }, () => rate(inputs.map(({ value, u }) => value + u * normal())))
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
    const spread = Math.sqrt(draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / (draws.length - 1))
    nearRelative(propagate(rate, inputs)?.u, spread, 0.02)
  })

  it('grows with every uncertainty that goes in', () => {
    const positive = fc.double({ min: 0.01, max: 10, noNaN: true })
    fc.assert(fc.property(positive, positive, positive, (a, b, more) => {
      const by = ([x, y]: readonly number[]) => 3 * x! - 2 * y!
      const less = propagate(by, [{ value: 1, u: a }, { value: 1, u: b }])!.u
      return propagate(by, [{ value: 1, u: a + more }, { value: 1, u: b }])!.u > less
    }))
  })
})
