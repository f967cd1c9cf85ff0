import assert from 'node:assert/strict'
import fc from 'fast-check'
import { baseUnit, printQuantity, readQuantity } from '../../../src/core/notation/quantity'
import { findUnit, units, type Dimension } from '../../../src/core/notation/units'
import { busyMs } from '../../busyMs'

function base(text: string, ...allowed: [Dimension, ...Dimension[]]): number {
  const reading = readQuantity(text, ...allowed)
  assert.ok(reading.value, text)
  return Number(reading.value.base.toFixed(9))
}

function refuses(text: string, allowed: [Dimension, ...Dimension[]], suggestion?: string) {
  const reading = readQuantity(text, ...allowed)
  assert.equal(reading.value, undefined, text)
  assert.equal(reading.value === undefined ? reading.suggestion : undefined, suggestion, text)
}

describe('a quantity', () => {
  it('bare is in mm, kg, N/mm, bar, °C, degrees or N', () => {
    for (const [dimension, symbol] of Object.entries({ length: 'mm', mass: 'kg', stiffness: 'N/mm', pressure: 'bar', temperature: '°C', angle: 'deg', force: 'N', volume: 'ml', share: '%' })) {
      assert.equal(baseUnit(dimension as Dimension).symbol, symbol)
      assert.equal(base('9.5', dimension as Dimension), 9.5)
    }
  })

  it('may carry any unit of its kind', () => {
    assert.equal(base('0.95 kgf/mm', 'stiffness'), 9.3163175)
    assert.equal(base('185 lb', 'mass'), 83.91458845)
    assert.equal(base('4 1/2 in', 'length'), 114.3)
    assert.equal(base('4.5"', 'length'), 114.3)
    assert.equal(base('650 m', 'length'), 650000)
    assert.equal(base('2100 ft', 'length'), 640080)
    assert.equal(base('68 °F', 'temperature'), 20)
    assert.equal(base('-3 °C', 'temperature'), -3)
    assert.equal(base('24.5°', 'angle'), 24.5)
  })

  it('takes a kg or lb for a force where only a force can be meant', () => {
    assert.equal(base('10 kg', 'force'), 98.0665)
    assert.equal(base('10 lb', 'force'), 44.482216153)
    assert.equal(base('10 kg', 'mass', 'force'), 10)
  })

  it('may be of one kind or another, and the first is what a bare number means', () => {
    const share = readQuantity('30 %', 'length', 'share')
    assert.equal(share.value?.unit.symbol, '%')
    assert.equal(readQuantity('30', 'length', 'share').value?.unit.symbol, 'mm')
  })

  it('of the wrong kind is refused', () => {
    refuses('30 psi', ['length'])
    refuses('3 clicks', ['length', 'share'])
    refuses('9.5 kg', ['stiffness'])
  })

  it('in an unknown unit is refused, and the suggestion never keeps the number under another unit', () => {
    refuses('0.95 kgm/mm', ['stiffness'], '0.95 kgf/mm')
    refuses('32 pis', ['pressure'], '32 psi')
    refuses('3 stone', ['mass'])
    refuses('5 parsec', ['length'])
    refuses('1,5', ['length'], '1.5')
    refuses('', ['length'])
  })

  it('is printed in a unit and read back as the same', () => {
    assert.equal(printQuantity(9.3163175, findUnit('kgf/mm')!), '0.95 kgf/mm')
    const measuring = units.filter((unit) => unit.factor > 0)
    fc.assert(fc.property(fc.constantFrom(...measuring), fc.integer({ min: -9999, max: 9999 }), (unit, hundredths) => {
      const text = `${hundredths / 100} ${unit.symbol}`
      const reading = readQuantity(text, unit.dimension)
      assert.ok(reading.value, text)
      assert.equal(printQuantity(reading.value.base, unit), text)
    }))
  })

  it('is read in every spelling of every unit', () => {
    for (const unit of units) for (const spelling of unit.spellings) assert.equal(readQuantity(`2 ${spelling}`, unit.dimension).value?.unit, unit, spelling)
  })

  it('never throws and never lingers', () => {
    for (const text of ['9'.repeat(5e6), `9 ${'n/m'.repeat(2e6)}`]) assert.ok(busyMs(() => readQuantity(text, 'stiffness')) < 500)
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => { readQuantity(text, 'length', 'share') }))
  })
})
