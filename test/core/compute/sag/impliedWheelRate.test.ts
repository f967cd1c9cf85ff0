import assert from 'node:assert/strict'
import fc from 'fast-check'
import { impliedWheelRate } from '../../../../src/core/compute/sag/impliedWheelRate'
import { readLength } from '../../../../src/core/compute/working/resolution'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

describe('impliedWheelRate', () => {
  it('linear spring: 450 N over 25.0 mm is 18 N/mm, over 20.0 mm 22.5 N/mm', () => {
    assert.equal(valueOf(impliedWheelRate({ riderLoadN: 450, bikeMm: [125], riderMm: [100] })), 18)
    assert.equal(valueOf(impliedWheelRate({ riderLoadN: 450, bikeMm: [125], riderMm: [105] })), 22.5)
  })

  it('gives back the rate that made the readings, whatever preload and friction', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(8, 60), number(0, 20), number(0, 6), (rate, preload, band) => {
      const length = (load: number) => 200 - (load / rate - preload)
      const pair = (load: number) => [length(load) + band, length(load) - band] as const
      nearRelative(valueOf(impliedWheelRate({ riderLoadN: 450, bikeMm: pair(900), riderMm: pair(1350) })), rate, 1e-9)
    }))
  })

  it('carries load and readings: u² / rate² = (u_W / W)² + (u_Δ / Δ)²', () => {
    const result = get(impliedWheelRate({ riderLoadN: { value: 450, u: 9 }, bikeMm: [readLength(128), readLength(122)], riderMm: [readLength(103), readLength(97)] }))
    near(result.value, 18, 1e-12)
    nearRelative(result.u, 18 * Math.hypot(9 / 450, Math.sqrt(1 / 3) / 25), 1e-3)
  })

  it('names everything that is missing', () => {
    assert.deepEqual(missingOf(impliedWheelRate({ riderLoadN: undefined, bikeMm: undefined, riderMm: [100] })), ['rider’s load on this end', 'length, bike alone'])
  })

  it('has no rate where the rider did not make it sink', () => {
    assert.equal(missingOf(impliedWheelRate({ riderLoadN: 450, bikeMm: [125], riderMm: [125] })).length, 1)
    assert.equal(missingOf(impliedWheelRate({ riderLoadN: 450, bikeMm: [125], riderMm: [130] })).length, 1)
    assert.equal(missingOf(impliedWheelRate({ riderLoadN: -1, bikeMm: [125], riderMm: [100] })).length, 1)
    assert.deepEqual(missingOf(impliedWheelRate({ riderLoadN: 0, bikeMm: [125], riderMm: [100] })), ['a rider’s load above zero'])
    assert.deepEqual(missingOf(impliedWheelRate({ riderLoadN: 450, bikeMm: [125], riderMm: [125] })), ['a rider sag above the bike’s'])
  })
})
