import assert from 'node:assert/strict'
import fc from 'fast-check'
import { axleLoads } from '../../../../src/core/compute/loads/axleLoads'
import { get, missingOf, near } from '../near'

describe('axleLoads', () => {
  it('teambenwell, centre of gravity: behind the front contact by rear weight times wheelbase over total', () => {
    near(get(axleLoads({ frontKg: 97.142857, rearKg: 102.857143, wheelbaseMm: 1400 })).behindFrontMm.value, 720, 1e-5)
  })

  it('J. R. Davis, tip 106: centre of mass 55 % of the wheelbase back is 45 % front, 55 % rear', () => {
    const loads = get(axleLoads({ frontKg: 90, rearKg: 110, wheelbaseMm: 1000 }))
    near(loads.behindFrontMm.value, 550, 1e-9)
    near(loads.frontShare.value, 45, 1e-12)
  })

  it('both distances make up the wheelbase', () => {
    const kg = fc.double({ min: 1, max: 300, noNaN: true })
    fc.assert(fc.property(kg, kg, (frontKg, rearKg) => {
      const loads = get(axleLoads({ frontKg, rearKg, wheelbaseMm: 1400 }))
      near(loads.behindFrontMm.value + loads.aheadOfRearMm.value, 1400, 1e-9)
      near(loads.totalKg.value, frontKg + rearKg, 1e-9)
    }))
  })

  it('tells a machine that stands on one wheel', () => {
    assert.equal(get(axleLoads({ frontKg: 0, rearKg: 200, wheelbaseMm: 1400 })).behindFrontMm.value, 1400)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(axleLoads({ frontKg: 90, rearKg: undefined, wheelbaseMm: undefined })), ['weight on the rear axle', 'wheelbase'])
    assert.deepEqual(missingOf(axleLoads({ frontKg: 0, rearKg: 0, wheelbaseMm: 1400 })), ['axle weights above zero'])
    assert.deepEqual(missingOf(axleLoads({ frontKg: -5, rearKg: 200, wheelbaseMm: 1400 })), ['axle weights above zero'])
  })
})
