import assert from 'node:assert/strict'
import fc from 'fast-check'
import { derivative, evaluate } from 'mathjs/number'
import { wheelSpring } from '../../../../src/core/compute/leverage/wheelRate'
import type { Point } from '../../../../src/core/compute/leverage/monotoneCurve'
import { get, missingOf, near, nearRelative } from '../near'

const s = '(0.42 z + 0.00045 z^2)'
const rising: Point[] = [0, 20, 40, 60, 80, 100, 130].map((z) => [z, evaluate(s, { z })])
const at = (wheelMm: number, table = rising) => get(wheelSpring({ springRateNPerMm: 95, preloadMm: 10, leverage: { table }, wheelMm }))

describe('wheelSpring', () => {
  it('Automotive Chassis Engineering, eq. 3.29 to 3.33: with a constant ratio the wheel rate is k · MR²', () => {
    near(get(wheelSpring({ springRateNPerMm: 72, preloadMm: 12, leverage: { motionRatio: 0.5 }, wheelMm: 40 })).rate.value, 18, 1e-12)
    near(get(wheelSpring({ springRateNPerMm: 100, preloadMm: 0, leverage: { motionRatio: 1 / 1.25 }, wheelMm: 40 })).rate.value, 64, 1e-12)
  })

  for (const z of [0, 30, 65, 130]) {
    it(`symbolic derivative (mathjs) at ${z} mm: force k·(p + s)·s′ and its slope, second term included`, () => {
      const slope = derivative(s, 'z').toString()
      const force = `95 (10 + ${s}) (${slope})`
      near(at(z).force.value, evaluate(force, { z }), 1e-9)
      near(at(z).rate.value, derivative(force, 'z').evaluate({ z }), 1e-9)
    })
  }

  it('is the slope of its own force in a measured table, between the rows', () => {
    const table: Point[] = [[0, 0], [20, 9.1], [40, 18.4], [60, 28], [80, 37.9], [100, 48.2], [130, 64.6]]
    for (const z of [10, 33, 71, 115]) {
      nearRelative((at(z + 1e-3, table).force.value - at(z - 1e-3, table).force.value) / 2e-3, at(z, table).rate.value, 1e-6)
    }
  })

  it('trap: without the second term a rising linkage looks softer than it is', () => {
    const { rate, motionRatio } = at(65)
    assert.ok(rate.value > 95 * motionRatio ** 2 * 1.1)
  })

  it('rises with preload on a rising linkage and not on a constant ratio', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(0, 20), number(0.5, 10), (preloadMm, more) => {
      const rate = (leverage: { table: Point[] } | { motionRatio: number }, p: number) => get(wheelSpring({ springRateNPerMm: 95, preloadMm: p, leverage, wheelMm: 50 })).rate.value
      return rate({ table: rising }, preloadMm + more) > rate({ table: rising }, preloadMm) && rate({ motionRatio: 0.45 }, preloadMm + more) === rate({ motionRatio: 0.45 }, preloadMm)
    }))
  })

  it('says whether the leverage was measured or taken as constant', () => {
    assert.match(at(65).rate.working.assumptions.join(), /measured leverage/)
    const constant = get(wheelSpring({ springRateNPerMm: 95, preloadMm: 10, leverage: { motionRatio: 0.5 }, wheelMm: 65 }))
    assert.match(constant.rate.working.assumptions.join(), /constant motion ratio/)
  })

  it('says what is missing, and guesses nothing beyond the table', () => {
    assert.deepEqual(missingOf(wheelSpring({ springRateNPerMm: undefined, preloadMm: 10, leverage: { motionRatio: 0.5 }, wheelMm: 40 })), ['spring rate'])
    assert.deepEqual(missingOf(wheelSpring({ springRateNPerMm: 95, preloadMm: 10, leverage: undefined, wheelMm: 40 })), ['motion ratio or leverage table'])
    assert.deepEqual(missingOf(wheelSpring({ springRateNPerMm: 95, preloadMm: 10, leverage: { table: rising }, wheelMm: 140 })), ['a leverage table that reaches 140 mm of wheel travel'])
    assert.equal(missingOf(wheelSpring({ springRateNPerMm: 95, preloadMm: 10, leverage: { table: rising }, wheelMm: undefined })).length, 1)
    for (const wheelMm of [-1, NaN]) assert.deepEqual(missingOf(wheelSpring({ springRateNPerMm: 95, preloadMm: 10, leverage: { motionRatio: 0.5 }, wheelMm })), ['place in the wheel travel'])
  })
})
