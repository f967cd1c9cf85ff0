import assert from 'node:assert/strict'
import fc from 'fast-check'
import { displayChoices, fileUnits, printShown, readDisplayUnits, sayIn, shownUnit, toShown, type DisplayUnits } from '../../../src/core/notation/displayUnits'
import { findUnit } from '../../../src/core/notation/units'
import { near, nearRelative } from '../compute/near'

const imperial: DisplayUnits = { length: 'in', rate: 'lb/in', force: 'lbf', mass: 'lb', pressure: 'psi', temperature: '°F' }
const shown = (value: number, unit: string, units: DisplayUnits) => toShown({ value }, unit, 0, units).value

describe('display units', () => {
  it('NIST SP 811, appendix B: every unit that may be chosen, against its factor', () => {
    near(shown(25.4, 'mm', imperial), 1, 1e-12)
    nearRelative(shown(0.175126835246, 'N/mm', imperial), 1, 1e-11)
    nearRelative(shown(9.80665, 'N/mm', { ...fileUnits, rate: 'kgf/mm' }), 1, 1e-12)
    nearRelative(shown(4.44822161526, 'N', imperial), 1, 1e-11)
    nearRelative(shown(9.80665, 'N', { ...fileUnits, force: 'kgf' }), 1, 1e-12)
    nearRelative(shown(0.45359237, 'kg', imperial), 1, 1e-12)
    nearRelative(shown(0.0689475729317, 'bar', imperial), 1, 1e-11)
    nearRelative(shown(1, 'bar', { ...fileUnits, pressure: 'kPa' }), 100, 1e-12)
  })

  it('NIST SP 811: temperatures by their zero, and their uncertainty without it', () => {
    for (const [c, f] of [[40, 104], [20, 68], [-40, -40]] as const) near(shown(c, '°C', imperial), f, 1e-9)
    near(toShown({ value: 20, u: 0.5 }, '°C', 0, imperial).u, 0.9, 1e-12)
  })

  it('print as many digits as say what was said before', () => {
    assert.equal(printShown({ value: 38 }, 'mm', 1, imperial), '1.5')
    assert.equal(printShown({ value: 38.123 }, 'mm', 1, imperial), '1.5')
    assert.equal(printShown({ value: 42.2 }, 'mm', 1, imperial), '1.66')
    assert.equal(printShown({ value: 18.24, u: 0.9 }, 'N/mm', 1, imperial), '104 ± 5')
    assert.equal(printShown({ value: 18.24, u: 0.9 }, 'N/mm', 1, { ...fileUnits, rate: 'kgf/mm' }), '1.86 ± 0.09')
    assert.equal(printShown({ value: 2.413 }, 'bar', 2, { ...fileUnits, pressure: 'kPa' }), '241')
    assert.equal(sayIn(imperial)(38, 'mm'), '1.5 in')
    assert.equal(sayIn(fileUnits)(38.04, 'mm'), '38 mm')
  })

  it('leave every other unit as it is', () => {
    for (const unit of ['%', '°', 'Hz', 'g', 'ml', '']) {
      assert.equal(shownUnit(unit, imperial), unit)
      assert.deepEqual(toShown({ value: 1.5, u: 0.1 }, unit, 2, imperial), { value: 1.5, u: 0.1, digits: 2, unit })
    }
  })

  it('property: in the format’s own units nothing changes, and every other says the same amount', () => {
    fc.assert(fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), fc.nat(6), (value, u, digits) => {
      for (const kind of Object.keys(displayChoices) as (keyof DisplayUnits)[]) {
        const unit = fileUnits[kind]
        assert.deepEqual(toShown({ value, u }, unit, digits, fileUnits), { value, u, digits, unit })
        for (const choice of displayChoices[kind]) {
          const other = findUnit(choice === 'in' ? 'inch' : choice)!
          const there = toShown({ value, u }, unit, digits, { ...fileUnits, [kind]: choice })
          near((there.value + (other.offset ?? 0)) * other.factor, value, 1e-9 * Math.max(1, Math.abs(value)))
        }
      }
    }))
  })

  it('are what settings say, and the format’s own where they say nothing that is known', () => {
    const said: Record<string, unknown> = { length: 'in', rate: 'N/m', pressure: 3, mass: undefined, temperature: '°F', force: '__proto__' }
    assert.deepEqual(readDisplayUnits((kind) => said[kind]), { ...fileUnits, length: 'in', temperature: '°F' })
    assert.equal(readDisplayUnits(() => undefined), fileUnits)
    assert.equal(readDisplayUnits((kind) => said[kind]), readDisplayUnits((kind) => said[kind]))
  })
})
