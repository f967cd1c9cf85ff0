import assert from 'node:assert/strict'
import fc from 'fast-check'
import { travelUsed } from '../../../../src/core/compute/travel/travelUsed'
import { get, missingOf, near } from '../near'

const used = (usedMm: number, travelMm = 120) => get(travelUsed({ usedMm, travelMm }))

describe('travelUsed', () => {
  it('tells the share and the reserve', () => {
    near(used(104).usedPercent.value, 86.6667, 1e-4)
    assert.equal(used(104).reserveMm.value, 16)
  })

  it('S. Brouggy, measuring the travel: tie at the end, too soft', () => {
    assert.equal(used(120).verdict, 'bottomed')
    assert.match(used(120).suggests.join(), /too soft/)
  })

  it('S. Brouggy, measuring the travel: only half way, too hard', () => {
    assert.equal(used(60).verdict, 'littleUsed')
    assert.match(used(60).suggests.join(), /too stiff/)
  })

  it('S. Brouggy, measuring the travel: only slightly less than all of it is ideal', () => {
    assert.equal(used(117).verdict, 'nearlyAll')
    assert.doesNotMatch(used(117).suggests.join(), /soft|stiff/)
  })

  it('our own choice: bottomed within 2 mm of the end, nearly all from 95 %, well used from 80 %, little up to 50 %', () => {
    assert.deepEqual([118, 117.9, 114, 113.9, 96, 95.9, 60.1, 60].map((mm) => used(mm).verdict),
      ['bottomed', 'nearlyAll', 'nearlyAll', 'wellUsed', 'wellUsed', 'reserve', 'reserve', 'littleUsed'])
  })

  it('takes other bounds', () => {
    const bounds = { bottomedWithinMm: 10, nearlyAllPercent: 90, wellUsedPercent: 70, littleUsedPercent: 40 }
    assert.equal(get(travelUsed({ usedMm: 111, travelMm: 120, bounds })).verdict, 'bottomed')
  })

  it('counts more than the travel as bottomed, with a reserve below zero', () => {
    assert.deepEqual([used(123).verdict, used(123).reserveMm.value], ['bottomed', -3])
  })

  it('looks at sag before springs and at springs before oil', () => {
    const order = used(120).suggests.map((line) => ['sag', 'spring', 'oil', 'compression'].find((word) => line.includes(word)))
    assert.deepEqual(order, ['sag', 'spring', 'oil', 'compression'])
  })

  it('share and reserve always make up the travel', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 300, noNaN: true }), fc.double({ min: 10, max: 300, noNaN: true }), (usedMm, travelMm) => {
      const result = used(usedMm, travelMm)
      near((result.usedPercent.value / 100) * travelMm + result.reserveMm.value, travelMm, 1e-9)
    }))
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(travelUsed({ usedMm: undefined, travelMm: 120 })), ['travel used'])
    assert.deepEqual(missingOf(travelUsed({ usedMm: 100, travelMm: 0 })), ['a travel above zero'])
    assert.deepEqual(missingOf(travelUsed({ usedMm: -1, travelMm: 120 })), ['travel used of zero or more'])
  })
})
