import assert from 'node:assert/strict'
import { coilPart, forceCurve } from '../../../../src/core/compute/springs/forceCurve'
import { airSpring } from '../../../../src/core/compute/springs/airSpring'
import { get, near } from '../near'

describe('forceCurve', () => {
  it('gives rows from fully extended to fully compressed, parts and total', () => {
    const rows = forceCurve(120, [coilPart(9, 10), { name: 'friction', at: () => 5 }], 4)
    assert.deepEqual(rows.map((row) => row.travelMm), [0, 30, 60, 90, 120])
    assert.deepEqual(rows[1], { travelMm: 30, partsN: [360, 5], totalN: 365 })
  })

  it('adds the air of a fork to its spring', () => {
    const air = get(airSpring({ sealDiameterMm: 43, boreMm: 39, oilLevelMm: 115, travelMm: 120 }))
    const rows = forceCurve(120, [coilPart(9, 10), { name: 'air', at: (mm) => air.at(mm).forceN }])
    assert.equal(rows.length, 21)
    near(rows[0]!.totalN, 90, 1e-9)
    const steps = rows.slice(1).map((row, place) => row.totalN - rows[place]!.totalN)
    assert.ok(steps.every((step, place) => place === 0 || step > steps[place - 1]!))
  })

  it('leaves out places without a finite force, and gives none without travel', () => {
    assert.equal(forceCurve(100, [{ name: 'odd', at: (mm) => 1 / (mm - 50) }], 2).length, 2)
    assert.equal(forceCurve(100, [coilPart(9, 0)], 1).length, 2)
    assert.deepEqual(forceCurve(100, [coilPart(9, 0)], 0), [])
    assert.deepEqual(forceCurve(0, [coilPart(9, 0)]), [])
    assert.deepEqual(forceCurve(NaN, [coilPart(9, 0)]), [])
  })
})
