import assert from 'node:assert/strict'
import fc from 'fast-check'
import { rateFromWire } from '../../../../src/core/compute/springs/rateFromWire'
import { get, missingOf, nearRelative, valueOf } from '../near'

const inch = 25.4
const psiInGPa = 6.89475729317e-6
const lbfPerInch = 0.175126835246

describe('rateFromWire', () => {
  it('strength of materials, problem 8.8: d 3, D 30, n 10, G 80 GPa is 3 N/mm, and 60 N at 20 mm', () => {
    const rate = valueOf(rateFromWire({ wireMm: 3, meanDiameterMm: 30, activeCoils: 10, shearModulusGPa: 80 }))
    nearRelative(rate, 3, 1e-12)
    nearRelative(rate * 20, 60, 1e-12)
  })

  it('Shigley 10th ed., problem 10-3: d 2.5, outer 31, 14 coils plain and ground, G 81 GPa is 1.314 N/mm', () => {
    const rate = valueOf(rateFromWire({ wireMm: 2.5, meanDiameterMm: 31 - 2.5, activeCoils: 14 - 1, shearModulusGPa: 81 }))
    nearRelative(rate, 1.314, 5e-4)
    nearRelative(rate, 1.3142474, 1e-7)
  })

  const musicWire = (meanIn: number) => valueOf(rateFromWire({ wireMm: 0.037 * inch, meanDiameterMm: meanIn * inch, activeCoils: 10.5, shearModulusGPa: 11.85e6 * psiInGPa })) / lbfPerInch

  it('Shigley, example 10-1, printed 4.13 lbf/in from memory: reproduced with D rounded to 0.400 in', () => {
    nearRelative(musicWire(0.4), 4.13, 1e-3)
    nearRelative(musicWire(0.4), 4.131103, 1e-6)
  })

  it('trap, Shigley, example 10-1: D = 7/16 − 0.037 in gives 4.1156 lbf/in, which is not the printed figure', () => {
    nearRelative(musicWire(7 / 16 - 0.037), 4.11565, 1e-6)
    assert.ok(Math.abs(musicWire(7 / 16 - 0.037) / 4.13 - 1) > 1e-3)
  })

  it('counts the wire to the fourth power: 1 % of it is 4 % of the rate', () => {
    nearRelative(get(rateFromWire({ wireMm: { value: 5, u: 0.05 }, meanDiameterMm: 35, activeCoils: 10, shearModulusGPa: 80 })).u! /
      valueOf(rateFromWire({ wireMm: 5, meanDiameterMm: 35, activeCoils: 10, shearModulusGPa: 80 })), 0.04, 1e-3)
  })

  it('rises with the wire and falls with diameter and coils', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(2, 6), number(20, 60), number(4, 20), number(0.01, 1), (d, D, n, more) => {
      const rate = (wireMm: number, meanDiameterMm: number, activeCoils: number) => valueOf(rateFromWire({ wireMm, meanDiameterMm, activeCoils }))
      const base = rate(d, D, n)
      return rate(d + more, D, n) > base && rate(d, D + more, n) < base && rate(d, D, n + more) < base
    }))
  })

  it('says what it assumed of the steel when no modulus is given', () => {
    const result = get(rateFromWire({ wireMm: 3, meanDiameterMm: 30, activeCoils: 10 }))
    assert.match(result.working.assumptions.join(), /80 ± 2 GPa/)
    nearRelative(result.u, (3 * 2) / Math.sqrt(3) / 80, 1e-9)
  })

  it('says what is missing or cannot be a spring', () => {
    assert.deepEqual(missingOf(rateFromWire({ wireMm: undefined, meanDiameterMm: 30, activeCoils: 10 })), ['wire diameter'])
    assert.deepEqual(missingOf(rateFromWire({ wireMm: 30, meanDiameterMm: 30, activeCoils: 10 })), ['a coil wider than its wire'])
    assert.deepEqual(missingOf(rateFromWire({ wireMm: 3, meanDiameterMm: 30, activeCoils: 0 })), ['spring measures above zero'])
  })
})
