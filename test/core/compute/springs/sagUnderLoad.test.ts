import assert from 'node:assert/strict'
import fc from 'fast-check'
import { sagUnderLoad } from '../../../../src/core/compute/springs/sagUnderLoad'
import { near } from '../near'

describe('sagUnderLoad', () => {
  it('encyclopaedia article Motorcycle suspension: 300 lb on two springs of 50 lb/in with 1 in of spacer sags 2.0 in', () => {
    near(sagUnderLoad({ wheelRateNPerMm: 100, wheelPreloadMm: 1 }, 300)?.sagMm, 2, 1e-12)
  })

  it('G. Byrnes: 50 to 55 mm of compression at 8.5 to 9.5 N/mm a leg carries 850 to 1045 N, and 15 mm of preload leaves 35 mm', () => {
    near(sagUnderLoad({ wheelRateNPerMm: 17, wheelPreloadMm: 15 }, 850)?.sagMm, 35, 1e-12)
    near(sagUnderLoad({ wheelRateNPerMm: 19, wheelPreloadMm: 20 }, 1045)?.sagMm, 35, 1e-12)
  })

  it('stands on its top stop where the load does not overcome the preload', () => {
    assert.deepEqual(sagUnderLoad({ wheelRateNPerMm: 18, wheelPreloadMm: 30 }, 450), { sagMm: 0, toppedOut: true })
  })

  it('derivation from F₀ = k·p: at a given rider sag the bike sag rises with the rate', () => {
    fc.assert(fc.property(fc.double({ min: 10, max: 40, noNaN: true }), fc.double({ min: 0.5, max: 10, noNaN: true }), (rate, more) => {
      const bikeSag = (k: number) => sagUnderLoad({ wheelRateNPerMm: k, wheelPreloadMm: 1350 / k - 60 }, 900)!
      const [soft, stiff] = [bikeSag(rate), bikeSag(rate + more)]
      fc.pre(!soft.toppedOut)
      return stiff.sagMm > soft.sagMm
    }))
  })

  it('is undefined for a rate not above zero', () => {
    assert.equal(sagUnderLoad({ wheelRateNPerMm: 0, wheelPreloadMm: 1 }, 300), undefined)
    assert.equal(sagUnderLoad({ wheelRateNPerMm: 18, wheelPreloadMm: NaN }, 300), undefined)
  })
})
