import assert from 'node:assert/strict'
import { derive, given } from '../../../../src/core/compute/working/derive'
import { formulaWithNumbers } from '../../../../src/core/compute/working/formulaWithNumbers'
import { get } from '../near'

const ratio = (a: number | undefined, b: number | undefined) => derive({
  formula: 'ratio = a / b', unit: '', from: { a: given('first', 'mm', a), b: given('second', 'mm', b) }, by: (v) => v.a / v.b, source: 'a book',
})

describe('formulaWithNumbers', () => {
  it('puts the numbers in the place of the symbols, negative ones in brackets', () => {
    const shown = derive({
      formula: 'rate = 1000 · G · d⁴ / (8 · D³) + x1', unit: '',
      from: { G: given('', '', 80), d: given('', '', 3), D: given('', '', 30), x1: given('', '', -1.23456789) },
      by: () => 1, source: '',
    })
    assert.equal(formulaWithNumbers(get(shown).working), 'rate = 1000 · 80 · 3⁴ / (8 · 30³) + (-1.23457)')
  })

  it('lets the caller print, for other units and digits', () => {
    assert.equal(formulaWithNumbers(get(ratio(6, 3)).working, ({ value, unit }) => `${value} ${unit}`), 'ratio = 6 mm / 3 mm')
  })
})
