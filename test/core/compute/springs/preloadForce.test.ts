import assert from 'node:assert/strict'
import { evenPreload, preloadForce } from '../../../../src/core/compute/springs/preloadForce'
import { missingOf, near, nearRelative, valueOf } from '../near'

describe('preloadForce', () => {
  it('turn of a 1.5 mm thread (pitch from memory) on 5.4 kgf/mm: 8.1 kgf = 79.434 N = 17.857 lbf', () => {
    const newton = valueOf(preloadForce({ rateNPerMm: 5.4 * 9.80665, preloadMm: 1.5 }))
    nearRelative(newton, 79.434, 1e-5)
    nearRelative(newton / 4.44822161526, 17.857, 3e-5)
  })

  it('encyclopaedia article Motorcycle suspension: 1 in of spacer on 50 lb/in is 50 lb, and 150 lb at 3 in', () => {
    const lbPerInch = 0.175126835246
    nearRelative(valueOf(preloadForce({ rateNPerMm: 50 * lbPerInch, preloadMm: 25.4 })), 50 * 4.44822161526, 1e-9)
    nearRelative(valueOf(preloadForce({ rateNPerMm: 50 * lbPerInch, preloadMm: 3 * 25.4 })), 150 * 4.44822161526, 1e-9)
  })

  it('names what is missing', () => {
    assert.deepEqual(missingOf(preloadForce({ rateNPerMm: 9, preloadMm: undefined })), ['spring preload'])
  })
})

describe('evenPreload', () => {
  it('is what both legs would need for the same force', () => {
    near(evenPreload([{ rateNPerMm: 9, preloadMm: 10 }, { rateNPerMm: 10, preloadMm: 0 }]), 90 / 19, 1e-12)
    near(evenPreload([{ rateNPerMm: 9, preloadMm: 10 }, { rateNPerMm: 9, preloadMm: 10 }]), 10, 1e-12)
  })

  it('is undefined without a spring', () => assert.equal(evenPreload([]), undefined))
})
