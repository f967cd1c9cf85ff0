import assert from 'node:assert/strict'
import fc from 'fast-check'
import { crossOver, dualRateForce } from '../../../../src/core/compute/springs/dualRate'
import { changeTravel, firstRate, secondRate } from '../../../../src/core/compute/springs/stackRates'
import { missingOf, near, valueOf } from '../near'

const stack = { softRateNPerMm: 8, stiffRateNPerMm: 12, softTravelMm: 30 }

describe('stackRates', () => {
  it('autorepairmagz.com, dual-rate springs: 8 on 12 N/mm is 4.8, and 12 once the soft one has stopped', () => {
    near(valueOf(firstRate(stack)), 4.8, 1e-12)
    near(valueOf(secondRate(stack)), 12, 1e-12)
  })

  it('force balance by hand: the soft one’s 30 mm and the stiff one’s 20 mm under 240 N', () => {
    near(valueOf(changeTravel({ ...stack, preloadMm: 0 })), 50, 1e-12)
    near(valueOf(changeTravel({ ...stack, preloadMm: 10 })), 40, 1e-12)
    near(valueOf(changeTravel({ ...stack, preloadMm: 10, motionRatio: 0.5 })), 80, 1e-12)
  })

  it('property: the force has its corner just there', () => {
    const rate = fc.double({ min: 1, max: 50, noNaN: true })
    fc.assert(fc.property(rate, rate, fc.double({ min: 1, max: 60, noNaN: true }), (softRateNPerMm, stiffRateNPerMm, softTravelMm) => {
      const facts = { softRateNPerMm, stiffRateNPerMm, softTravelMm }
      const at = valueOf(changeTravel({ ...facts, preloadMm: 0 }))
      near(at, crossOver(facts).atMm, 1e-9 * at)
      const slope = (from: number) => (dualRateForce(facts, from + at / 100) - dualRateForce(facts, from)) / (at / 100)
      near(slope(0.5 * at), valueOf(firstRate(facts)), 1e-6 * stiffRateNPerMm)
      near(slope(1.2 * at), valueOf(secondRate(facts)), 1e-6 * stiffRateNPerMm)
    }), { numRuns: 100 })
  })

  it('names what is missing and what cannot be', () => {
    assert.deepEqual(missingOf(changeTravel({ ...stack, preloadMm: undefined })), ['spring preload'])
    assert.deepEqual(missingOf(changeTravel({ ...stack, softTravelMm: 0, preloadMm: 0 })), ['rates and a travel above zero'])
    assert.deepEqual(missingOf(firstRate({ softRateNPerMm: -8, stiffRateNPerMm: 12 })), ['rates and a travel above zero'])
  })
})
