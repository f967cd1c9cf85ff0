import assert from 'node:assert/strict'
import fc from 'fast-check'
import { sagDifference } from '../../../../src/core/compute/sag/sagDifference'
import { sag } from '../../../../src/core/compute/sag/sag'
import { sagUnderLoad } from '../../../../src/core/compute/springs/sagUnderLoad'
import { readLength } from '../../../../src/core/compute/working/resolution'
import { get, missingOf, near, valueOf } from '../near'

describe('sagDifference', () => {
  it('is rider sag less bike sag, whatever the extended length', () => {
    const readings = { bikeMm: [128, 122], riderMm: [118, 110] } as const
    const bike = valueOf(sag({ load: 'bike', extendedMm: 152, readingsMm: readings.bikeMm }))
    const rider = valueOf(sag({ load: 'rider', extendedMm: 152, readingsMm: readings.riderMm }))
    assert.equal(valueOf(sagDifference(readings)), rider - bike)
  })

  it('mixes a pair with a single reading', () => {
    assert.equal(valueOf(sagDifference({ bikeMm: [125], riderMm: [118, 110] })), 11)
  })

  it('carries four readings and not the extended length: u = √(4 / 12) mm at ±1 mm', () => {
    const [bikeMm, riderMm] = [[readLength(128), readLength(122)], [readLength(118), readLength(110)]] as const
    near(get(sagDifference({ bikeMm, riderMm })).u, Math.sqrt(1 / 3), 1e-12)
  })

  it('linear spring, 450 N on 18 and on 22.5 N/mm: 25.0 and 20.0 mm, whatever the preload', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 20, noNaN: true }), fc.constantFrom([18, 25], [22.5, 20]), (wheelPreloadMm, [wheelRateNPerMm, expected]) => {
      const end = { wheelRateNPerMm: wheelRateNPerMm!, wheelPreloadMm }
      const [bike, rider] = [sagUnderLoad(end, 700)!, sagUnderLoad(end, 1150)!]
      near(rider.sagMm - bike.sagMm, expected!, 1e-9)
    }))
  })

  it('names the readings that are missing', () => {
    assert.deepEqual(missingOf(sagDifference({ bikeMm: undefined, riderMm: [118, 110] })), ['length, bike alone'])
  })
})
