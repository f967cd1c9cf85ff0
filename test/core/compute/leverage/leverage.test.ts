import assert from 'node:assert/strict'
import { invertRatio, readLeverage } from '../../../../src/core/compute/leverage/leverage'
import { get, missingOf, near } from '../near'

describe('readLeverage', () => {
  it('rctech: 1 in at the shock for 2 in at the wheel is a motion ratio of 0.50', () => {
    const drive = get(readLeverage({ table: [[0, 0], [50.8, 25.4]] }))
    near(drive.at(20)!.slope, 0.5, 1e-12)
  })

  it('keeps a constant ratio over any travel', () => {
    const point = get(readLeverage({ motionRatio: 0.45 })).at(100)!
    assert.deepEqual([point.value, point.slope, point.curvature], [45, 0.45, 0])
  })

  it('counts travel from the first row, whatever that was measured from', () => {
    const drive = get(readLeverage({ table: [[10, 204], [60, 228], [110, 254]] }))
    near(drive.at(0)!.value, 0, 1e-12)
    near(drive.at(50)!.value, 24, 1e-12)
    assert.equal(drive.toMm, 100)
  })

  it('reaches the last row in spite of rounding, and not beyond', () => {
    const drive = get(readLeverage({ table: [[0.3, 0], [0.5, 0.1], [0.9, 0.3]] }))
    assert.ok(0.3 + drive.toMm > 0.9)
    assert.ok(drive.at(drive.toMm))
    assert.equal(drive.at(drive.toMm + 0.001), undefined)
  })

  it('says what is wrong', () => {
    assert.deepEqual(missingOf(readLeverage(undefined)), ['motion ratio or leverage table'])
    assert.deepEqual(missingOf(readLeverage({ motionRatio: 0 })), ['a motion ratio above zero'])
    assert.deepEqual(missingOf(readLeverage({ table: [[0, 0]] })), ['a leverage table of at least two rows'])
    assert.match(missingOf(readLeverage({ table: [[0, 0], [10, 5], [20, 5]] }))[0]!, /rise from row to row/)
    assert.match(missingOf(readLeverage({ table: [[0, 0], [20, 5], [10, 9]] }))[0]!, /rise from row to row/)
  })
})

describe('invertRatio', () => {
  it('Automotive Chassis Engineering, reciprocal convention: 1.25 wheel to spring makes a wheel rate of 64 % of the spring’s', () => {
    near(invertRatio(1.25)! ** 2, 0.64, 1e-12)
  })

  it('is undefined for a ratio not above zero', () => assert.equal(invertRatio(0), undefined))
})
