import assert from 'node:assert/strict'
import fc from 'fast-check'
import { rateFromOutside, readCalliper } from '../../../../src/core/compute/springs/rateFromOutside'
import { rateFromWire } from '../../../../src/core/compute/springs/rateFromWire'
import { get, missingOf, near, nearRelative, valueOf } from '../near'
import { seededNormal } from '../working/seededNormal'

describe('rateFromOutside', () => {
  it('Shigley’s MED, 10th ed., problem 10-3: wire 2.5 mm, 31 mm over all, 13 active coils, 81 GPa: 1.314 N/mm printed', () => {
    nearRelative(valueOf(rateFromOutside({ wireMm: 2.5, outerMm: 31, activeCoils: 13, shearModulusGPa: 81 })), 1.3142474, 1e-7)
  })

  it('is the rate from the mean diameter, and not from the outer one', () => {
    const outside = valueOf(rateFromOutside({ wireMm: 4, outerMm: 34, activeCoils: 20 }))
    nearRelative(outside, valueOf(rateFromWire({ wireMm: 4, meanDiameterMm: 30, activeCoils: 20 })), 1e-12)
    assert.ok(outside > 1.4 * valueOf(rateFromWire({ wireMm: 4, meanDiameterMm: 34, activeCoils: 20 })))
  })

  it('JCGM 100:2008, 5.1.3: the calliper’s share by hand, wire and mean diameter moving together, and against a Monte Carlo of 40 000', () => {
    const rate = get(rateFromOutside({ wireMm: readCalliper(4), outerMm: readCalliper(34), activeCoils: 20, shearModulusGPa: 80 }))
    const [u, k] = [0.05 / Math.sqrt(3), rate.value]
    near(rate.u, k * u * Math.hypot(4 / 4 + 3 / 30, 3 / 30), k * 1e-3)
    const normal = seededNormal(7)
    const draws = Array.from({ length: 40_000 }, () => {
      const [wireMm, outerMm] = [4 + u * normal(), 34 + u * normal()]
      return (80_000 * wireMm ** 4) / (8 * (outerMm - wireMm) ** 3 * 20)
    })
    const mean = draws.reduce((sum, each) => sum + each, 0) / draws.length
    const spread = Math.sqrt(draws.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (draws.length - 1))
    nearRelative(rate.u, spread, 0.02)
  })

  it('property: thicker wire is stiffer, a wider coil and more coils are softer', () => {
    const measures = { d: fc.double({ min: 2, max: 12, noNaN: true }), o: fc.double({ min: 25, max: 80, noNaN: true }), n: fc.double({ min: 4, max: 40, noNaN: true }) }
    fc.assert(fc.property(measures.d, measures.o, measures.n, (d, o, n) => {
      const k = (wireMm: number, outerMm: number, activeCoils: number) => valueOf(rateFromOutside({ wireMm, outerMm, activeCoils }))
      assert.ok(k(d + 0.1, o, n) > k(d, o, n) && k(d, o + 1, n) < k(d, o, n) && k(d, o, n + 0.5) < k(d, o, n))
    }), { numRuns: 100 })
  })

  it('names what is missing and what cannot be', () => {
    assert.deepEqual(missingOf(rateFromOutside({ wireMm: undefined, outerMm: 30, activeCoils: undefined })), ['wire diameter of the spring', 'active coils of the spring'])
    assert.deepEqual(missingOf(rateFromOutside({ wireMm: 16, outerMm: 30, activeCoils: 10 })), ['a coil wider than its wire'])
    assert.deepEqual(missingOf(rateFromOutside({ wireMm: 4, outerMm: 30, activeCoils: 0 })), ['spring measures above zero'])
  })
})
