import assert from 'node:assert/strict'
import fc from 'fast-check'
import { forkPreloadRatio, preloadChange } from '../../../../src/core/compute/preload/preloadChange'
import { sagUnderLoad } from '../../../../src/core/compute/springs/sagUnderLoad'
import { get, missingOf, near, valueOf } from '../near'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('preloadChange', () => {
  it('G. Byrnes, Sag and Preload II: 50 mm of compression for 35 mm of sag is 15 mm of preload', () => {
    assert.equal(valueOf(preloadChange({ sagMm: 50, targetMm: 35, motionRatio: 1 })), 15)
  })

  it('encyclopaedia article Motorcycle suspension: two springs of 50 lb/in under 300 lb need 1 in of spacer for 2 in of sag', () => {
    const withoutSpacer = 300 / (2 * 50)
    near(valueOf(preloadChange({ sagMm: withoutSpacer * 25.4, targetMm: 2 * 25.4, motionRatio: 1 })), 25.4, 1e-9)
  })

  it('Sport Rider: on a fork a turn of 1 mm changes sag by 1 mm', () => {
    assert.equal(valueOf(preloadChange({ sagMm: 36, targetMm: 35, motionRatio: 1 })), 1)
  })

  it('Bike (UK), August 2019: 63 mm without and 35 mm with 13 mm of preload imply a leverage near 2.15, loosely', () => {
    const loose = valueOf(preloadChange({ sagMm: 63, targetMm: 35, motionRatio: 1 / 2.154 }))
    near(loose, 13, 13 * 0.2)
  })

  it('gives less at the shock than at the wheel, by the motion ratio', () => {
    assert.equal(valueOf(preloadChange({ sagMm: 40, targetMm: 35, motionRatio: 0.5 })), 2.5)
  })

  it('is above zero for more preload exactly when the sag is above its target', () => {
    fc.assert(fc.property(number(1, 100), number(1, 100), number(0.2, 1), (sagMm, targetMm, motionRatio) =>
      Math.sign(valueOf(preloadChange({ sagMm, targetMm, motionRatio }))) === Math.sign(sagMm - targetMm)))
  })

  it('reaches the target on a linear end', () => {
    fc.assert(fc.property(number(8, 60), number(0.3, 1), number(20, 60), (springRate, m, targetMm) => {
      const end = (preloadMm: number) => ({ wheelRateNPerMm: springRate * m * m, wheelPreloadMm: preloadMm / m })
      const load = end(0).wheelRateNPerMm * 70
      const change = valueOf(preloadChange({ sagMm: sagUnderLoad(end(0), load)!.sagMm, targetMm, motionRatio: m }))
      near(sagUnderLoad(end(change), load)!.sagMm, targetMm, 1e-9)
    }))
  })

  it('carries the uncertainty of the sag', () => {
    near(get(preloadChange({ sagMm: { value: 40, u: 0.8 }, targetMm: 35, motionRatio: 0.5 })).u, 0.4, 1e-12)
  })

  it('names what is missing', () => {
    assert.deepEqual(missingOf(preloadChange({ sagMm: 40, targetMm: 35, motionRatio: undefined })), ['motion ratio, spring to sag'])
    assert.equal(missingOf(preloadChange({ sagMm: 40, targetMm: 35, motionRatio: 0 })).length, 1)
  })
})

describe('forkPreloadRatio', () => {
  it('is 1 where every leg adjusts and more where one leg has to do it alone', () => {
    assert.equal(forkPreloadRatio([{ rateNPerMm: 9, adjustable: true }, { rateNPerMm: 9, adjustable: true }]), 1)
    assert.equal(forkPreloadRatio([{ rateNPerMm: 9, adjustable: true }, { rateNPerMm: 9, adjustable: false }]), 2)
    assert.equal(forkPreloadRatio([{ rateNPerMm: 9, adjustable: true }, { rateNPerMm: 0, adjustable: false }]), 1)
  })

  it('is undefined where nothing adjusts', () => {
    assert.equal(forkPreloadRatio([{ rateNPerMm: 9, adjustable: false }]), undefined)
  })
})
