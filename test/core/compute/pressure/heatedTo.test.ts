import assert from 'node:assert/strict'
import { heatedTo, pressureRise } from '../../../../src/core/compute/pressure/heatedTo'
import { sealedPressure } from '../../../../src/core/compute/pressure/sealedPressure'
import { missingOf, near, valueOf } from '../near'

describe('heatedTo', () => {
  it('assignmentexpert, question 1507: 658 kPa gauge at 20 °C that reads 761.66 kPa is at 60 °C', () => {
    near(valueOf(heatedTo({ coldBar: 6.58, coldC: 20, hotBar: 7.6166, atmosphereBar: 1.013 })), 60, 0.03)
  })
  it('turns `sealedPressure` round', () => {
    for (const toC of [-5, 35, 90]) near(valueOf(heatedTo({ coldBar: 2.1, coldC: 20, hotBar: valueOf(sealedPressure({ gaugeBar: 2.1, fromC: 20, toC })) })), toC, 1e-9)
  })
  it('a trap: the ratio of gauge pressures would give another temperature', () => {
    const wrong = (2.5 / 2.1) * 293.15 - 273.15
    assert.ok(Math.abs(valueOf(heatedTo({ coldBar: 2.1, coldC: 20, hotBar: 2.5 })) - wrong) > 10)
  })
  it('says what is missing', () => assert.deepEqual(missingOf(heatedTo({ coldBar: 2, coldC: undefined, hotBar: 2.4 })), ['temperature when cold']))
})

describe('pressureRise', () => {
  it('2.0 to 2.4 bar is 20 %', () => near(valueOf(pressureRise({ coldBar: 2, hotBar: 2.4 })), 20, 1e-9))
  it('has none for no cold pressure', () => assert.equal(missingOf(pressureRise({ coldBar: 0, hotBar: 2 })).length, 1))
})
