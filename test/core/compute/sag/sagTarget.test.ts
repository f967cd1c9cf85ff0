import assert from 'node:assert/strict'
import { sagTarget } from '../../../../src/core/compute/sag/sagTarget'
import { get, missingOf, near } from '../near'

describe('sagTarget', () => {
  it('gives a published window in mm as it is', () => {
    const target = get(sagTarget({ use: 'road', end: 'front', load: 'rider' }))
    assert.deepEqual([target.lowMm, target.highMm], [30, 35])
  })

  it('turns a percentage into mm of this machine’s travel and shows both', () => {
    const target = get(sagTarget({ use: 'road', end: 'rear', load: 'rider', travelMm: 130 }))
    near(target.lowMm, 32.5, 1e-12)
    near(target.highMm, 39, 1e-12)
    assert.match(target.source, /25 to 30 % of 130 mm/)
  })

  it('G. Byrnes: 30 to 35 % of 115 mm is 34.5 to 40.25 mm, within his 30 to 40 mm but for the last quarter', () => {
    const target = get(sagTarget({ use: 'touring', end: 'front', load: 'rider', travelMm: 115 }))
    near(target.lowMm, 34.5, 1e-9)
    near(target.highMm, 40.25, 1e-9)
  })

  it('prefers the machine’s own window, and says that it is its own', () => {
    const target = get(sagTarget({ use: 'road', end: 'front', load: 'rider', own: { low: 28, high: 32, unit: 'mm' } }))
    assert.deepEqual([target.lowMm, target.highMm, target.source], [28, 32, 'this machine’s own window'])
  })

  it('needs no use for an own window', () => {
    assert.equal(get(sagTarget({ use: undefined, end: 'rear', load: 'bike', travelMm: 200, own: { low: 5, high: 10, unit: 'percent' } })).highMm, 20)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(sagTarget({ use: undefined, end: 'front', load: 'rider' })), ['what the machine is used for'])
    assert.deepEqual(missingOf(sagTarget({ use: 'road', end: 'rear', load: 'rider' })), ['travel of this end'])
    assert.deepEqual(missingOf(sagTarget({ use: 'road', end: 'rear', load: 'rider', travelMm: 0 })), ['travel of this end'])
    assert.equal(get(sagTarget({ use: undefined, end: 'rear', load: 'rider', own: { low: 30, high: 30, unit: 'mm' } })).lowMm, 30)
    assert.match(missingOf(sagTarget({ use: 'enduro', end: 'front', load: 'bike' }))[0]!, /published window for enduro/)
    assert.equal(missingOf(sagTarget({ use: 'road', end: 'front', load: 'rider', own: { low: 35, high: 30, unit: 'mm' } })).length, 1)
  })
})
