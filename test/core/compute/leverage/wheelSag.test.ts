import assert from 'node:assert/strict'
import fc from 'fast-check'
import { wheelSag } from '../../../../src/core/compute/leverage/wheelSag'
import { sagUnderLoad } from '../../../../src/core/compute/springs/sagUnderLoad'
import { get, missingOf, near } from '../near'

const rear = { springRateNPerMm: 95, preloadMm: 10, travelMm: 130, loadN: 1200 }
const table = [0, 20, 40, 60, 80, 100, 130].map((z) => [z, 0.42 * z + 0.00045 * z * z] as const)

describe('wheelSag', () => {
  it('scipy.optimize.brentq: 1200 N on a rising linkage comes to rest at 40.354019597118 mm', () => {
    near(get(wheelSag({ ...rear, leverage: { table } })).sagMm, 40.354019597118, 1e-9)
  })

  it('is the linear sag for a constant ratio', () => {
    fc.assert(fc.property(fc.double({ min: 0.35, max: 0.7, noNaN: true }), fc.double({ min: 600, max: 1200, noNaN: true }), (motionRatio, loadN) => {
      const linear = sagUnderLoad({ wheelRateNPerMm: 95 * motionRatio ** 2, wheelPreloadMm: 10 / motionRatio }, loadN)!
      fc.pre(linear.sagMm < 130)
      near(get(wheelSag({ ...rear, loadN, leverage: { motionRatio } })).sagMm, linear.sagMm, 1e-9)
    }))
  })

  it('stands on its top stop under a load below the preload', () => {
    assert.deepEqual(get(wheelSag({ ...rear, loadN: 200, leverage: { table } })), { sagMm: 0, toppedOut: true })
  })

  it('says when the spring does not carry the load within the travel, or facts are missing', () => {
    assert.match(missingOf(wheelSag({ ...rear, loadN: 90_000, leverage: { table } }))[0]!, /carries the load/)
    assert.equal(missingOf(wheelSag({ ...rear, loadN: NaN, leverage: { table } })).length, 1)
    assert.equal(missingOf(wheelSag({ ...rear, travelMm: 0, leverage: { table } })).length, 1)
    assert.deepEqual(missingOf(wheelSag({ ...rear, springRateNPerMm: 0, leverage: { table } })), ['a travel and a spring rate above zero'])
    assert.equal(missingOf(wheelSag({ ...rear, leverage: undefined })).length, 1)
  })
})
