import assert from 'node:assert/strict'
import fc from 'fast-check'
import { dampingRatio, decrement, ratioFromDecrement } from '../../../../src/core/compute/bounce/dampingRatio'
import { overshoot } from '../../../../src/core/compute/bounce/overshoot'
import { seededNormal } from '../working/seededNormal'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

const half = (...heightsMm: number[]) => valueOf(dampingRatio({ heightsMm, spacing: 'halfCycle' }))

describe('dampingRatio', () => {
  it('Rao, shock absorber for a motorcycle: to a quarter in half a cycle, printed 0.4037', () => {
    nearRelative(half(250, 62.5), 0.4037127519, 1e-9)
    nearRelative(half(250, 62.5), 0.4037, 1e-4)
  })

  it('Rao: the same over a whole cycle, δ = ln 16 = 2.7726', () => {
    near(decrement([250, 250 / 16]), 2.7725887, 1e-7)
    nearRelative(valueOf(dampingRatio({ heightsMm: [250, 250 / 16], spacing: 'cycle' })), 0.4037127519, 1e-9)
  })

  it('answersarena, 6 kg on 5400 N/m: peaks 3 to 2 give δ 0.4054651081 and 0.0643978280, not the small-damping 0.0645317762', () => {
    near(decrement([3, 2]), 0.4054651081, 1e-10)
    const ratio = valueOf(dampingRatio({ heightsMm: [3, 2], spacing: 'cycle' }))
    near(ratio, 0.064397828, 1e-9)
    near(decrement([3, 2]) / (2 * Math.PI), 0.0645317762, 1e-10)
    assert.notEqual(ratio, 0.0645317762)
  })

  it('answersarena: fifth to seventh peak is 2.25', () => {
    const peaks = Array.from({ length: 7 }, (_, peak) => 10 * (2 / 3) ** peak)
    near(peaks[4]! / peaks[6]!, 2.25, 1e-12)
    near(decrement(peaks), 0.4054651081, 1e-9)
  })

  it('physicsforums 326269: 13 % on the 100th cycle is δ = 0.0204022, not 2.04', () => {
    const heights = Array.from({ length: 101 }, (_, cycle) => 100 * 0.13 ** (cycle / 100))
    near(decrement(heights), 0.0204022, 1e-6)
  })

  it('synthetic bounce, ζ 0.3 at 2 Hz: 40, 14.893044, 5.545069, 2.064573 mm give 0.3', () => {
    near(half(-40, 14.893044, -5.545069, 2.064573), 0.3, 1e-7)
  })

  it('synthetic bounce, sampled at 200 Hz: a first overshoot of 14.887974 gives 0.300094', () => {
    near(half(40, 14.887974), 0.300094, 1e-6)
  })

  it('gives back the ratio that made the swings, whatever their signs and number', () => {
    fc.assert(fc.property(fc.double({ min: 0.02, max: 0.85, noNaN: true }), fc.integer({ min: 2, max: 6 }), (ratio, count) => {
      const heights = Array.from({ length: count }, (_, swing) => 60 * (-overshoot(ratio)!) ** swing)
      near(half(...heights), ratio, 1e-9)
    }))
  })

  it('uses every swing: least squares agree with a line fitted by numpy', () => {
    // numpy.polyfit([0, 1, 2, 3], log([40, 15.5, 5.2, 2.3]), 1)[0]
    near(decrement([40, 15.5, 5.2, 2.3]), 0.9660092391874, 1e-9)
  })

  it('agrees with a seeded Monte Carlo run (JCGM 101) for heights read to a millimetre', () => {
    const normal = seededNormal(3)
    const heights = [60, 24, 10]
    const draws = Array.from({ length: 20_000 }, () => ratioFromDecrement(decrement(heights.map((height) => height + 0.577 * normal())), 'halfCycle'))
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
    const spread = Math.sqrt(draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / (draws.length - 1))
    nearRelative(get(dampingRatio({ heightsMm: heights.map((value) => ({ value, u: 0.577 })), spacing: 'halfCycle' })).u, spread, 0.03)
  })

  it('shows the formula for two heights and the line for more', () => {
    const formula = (...heightsMm: number[]) => get(dampingRatio({ heightsMm, spacing: 'halfCycle' })).working.formula
    assert.equal(formula(40, 10), 'ratio = δ / √(π² + δ²), δ = ln(x0 / x1)')
    assert.equal(formula(40, 15, 6), 'ratio = δ / √(π² + δ²), δ = −slope of ln(x0), … ln(x2) over the swings')
  })

  it('says what is missing', () => {
    assert.match(missingOf(dampingRatio({ heightsMm: [40], spacing: 'halfCycle' }))[0]!, /two swing heights/)
    assert.match(missingOf(dampingRatio({ heightsMm: [40, 0], spacing: 'halfCycle' }))[0]!, /above zero/)
    assert.match(missingOf(dampingRatio({ heightsMm: [10, 20], spacing: 'halfCycle' }))[0]!, /die away/)
    assert.deepEqual(missingOf(dampingRatio({ heightsMm: [10, NaN], spacing: 'halfCycle' })), ['swing height 2'])
  })
})
