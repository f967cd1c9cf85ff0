import assert from 'node:assert/strict'
import fc from 'fast-check'
import { nearestRates, usualRateStepsNPerMm } from '../../../../src/core/compute/springs/nearestRates'

describe('nearestRates', () => {
  it('encloses a rate by the steps sold', () => {
    assert.deepEqual(nearestRates(9.3, 0.5), { below: 9, above: 9.5, nearest: 9.5 })
    assert.deepEqual(nearestRates(92, 5), { below: 90, above: 95, nearest: 90 })
  })

  it('common practice, no source: fork springs in steps of 0.5, shock springs of 5 N/mm', () => {
    assert.deepEqual(usualRateStepsNPerMm, { fork: 0.5, shock: 5 })
  })

  it('is one rate where the rate is a step, bits of the division aside', () => {
    assert.deepEqual(nearestRates(0.3, 0.1), { below: 0.3, above: 0.3, nearest: 0.3 })
  })

  it('always encloses', () => {
    fc.assert(fc.property(fc.double({ min: 0.2, max: 300, noNaN: true }), fc.constantFrom(0.25, 0.5, 1, 5), (rate, step) => {
      const { below, above } = nearestRates(rate, step)!
      return below <= rate + 1e-9 && above >= rate - 1e-9 && above - below <= step + 1e-9
    }))
  })

  it('is undefined for a rate or a step not above zero', () => {
    assert.equal(nearestRates(0, 5), undefined)
    assert.equal(nearestRates(9, 0), undefined)
    assert.equal(nearestRates(9, -1), undefined)
    assert.equal(nearestRates(Infinity, 5), undefined)
    assert.equal(nearestRates(NaN, 5), undefined)
  })
})
