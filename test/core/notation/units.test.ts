import assert from 'node:assert/strict'
import fc from 'fast-check'
import { findUnit, fromBase, isCount, toBase, units } from '../../../src/core/notation/units'

function convert(amount: number, from: string, to: string): number {
  const [a, b] = [findUnit(from)!, findUnit(to)!]
  assert.equal(a.dimension, b.dimension)
  return fromBase(toBase(amount, a), b)
}

function near(actual: number, expected: number, relative: number) {
  assert.ok(Math.abs(actual - expected) <= Math.abs(expected) * relative, `${actual} is not ${expected}`)
}

describe('the units', () => {
  it('are each found by every spelling, in any case, and no spelling means two', () => {
    const seen = new Set<string>()
    for (const unit of units) {
      assert.ok(unit.spellings.includes(unit.symbol.toLowerCase()), unit.symbol)
      for (const spelling of unit.spellings) {
        assert.equal(spelling, spelling.toLowerCase())
        assert.ok(!seen.has(spelling), spelling)
        seen.add(spelling)
        assert.equal(findUnit(spelling), unit)
        assert.equal(findUnit(spelling.toUpperCase()), unit)
      }
    }
  })

  it('are unknown where nobody writes them so', () => {
    for (const spelling of ['', 'in', 'furlong', '__proto__', 'constructor', 'x'.repeat(1e6)]) assert.equal(findUnit(spelling), undefined)
  })

  it('convert forwards and back to the same, to one part in 10¹²', () => {
    fc.assert(fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), fc.constantFrom(...units), (amount, unit) => {
      const scale = Math.max(amount, Math.abs(unit.offset ?? 0))
      assert.ok(Math.abs(fromBase(toBase(amount, unit), unit) - amount) <= scale * 1e-12)
    }))
  })

  it('tell what counts from what measures', () => {
    assert.deepEqual(units.filter(isCount).map((unit) => unit.symbol), ['clicks', 'turns', 'flats', 'rings', 'lines', 'steps', 'dial'])
  })
})

describe('published conversion factors', () => {
  // U1 to U5: NIST SP 811 (2008), appendix B; figures from GNU units 2.22.
  it('of spring rates', () => {
    near(convert(1, 'lbf/in', 'N/mm'), 0.175126835246, 1e-11)
    assert.equal(convert(1, 'kgf/mm', 'N/mm'), 9.80665)
    near(convert(1, 'kgf/mm', 'lbf/in'), 55.997414595, 1e-10)
    assert.equal(findUnit('lb/in'), findUnit('lbf/in'))
  })

  it('of pressures', () => {
    near(convert(1, 'psi', 'kPa'), 6.89475729317, 1e-11)
    near(convert(1, 'psi', 'bar'), 0.0689475729317, 1e-11)
    near(convert(1, 'bar', 'kPa'), 100, 1e-15)
    near(convert(1, 'kgf/cm²', 'kPa'), 98.0665, 1e-15)
  })

  it('of length, mass and force', () => {
    assert.equal(convert(1, 'inch', 'mm'), 25.4)
    assert.equal(convert(1, 'lb', 'kg'), 0.45359237)
    near(convert(1, 'lbf', 'N'), 4.44822161526, 1e-11)
    assert.equal(convert(1, 'kgf', 'N'), 9.80665)
    near(convert(1, 'ft', 'inch'), 12, 1e-15)
  })

  it('of temperature', () => {
    for (const [fahrenheit, celsius] of [[104, 40], [68, 20], [-40, -40]] as const) {
      near(convert(fahrenheit, '°F', '°C'), celsius, 1e-15)
      near(convert(celsius, '°C', '°F'), fahrenheit, 1e-15)
    }
  })

  // 2004 CRF250X service manual: damper gas 981 kPa, 10.0 kgf/cm², 142 psi; tyre 98 kPa, 1.0 kgf/cm², 14 psi.
  it('agree with the triples a service manual prints, to the digits printed', () => {
    assert.equal(convert(981, 'kPa', 'kgf/cm²').toFixed(1), '10.0')
    assert.equal(convert(981, 'kPa', 'psi').toFixed(0), '142')
    assert.equal(convert(98, 'kPa', 'kgf/cm²').toFixed(1), '1.0')
    assert.equal(convert(98, 'kPa', 'psi').toFixed(0), '14')
  })

  // U12: recomputed from the exact definitions.
  it('agree with the marks on springs', () => {
    near(convert(0.48, 'kgf/mm', 'N/mm'), 4.70719, 1e-5)
    near(convert(9, 'N/mm', 'kgf/mm'), 0.91774, 1e-5)
    near(convert(90, 'N/mm', 'lbf/in'), 513.914, 1e-5)
    near(convert(500, 'lbf/in', 'N/mm'), 87.56342, 1e-5)
  })
})
