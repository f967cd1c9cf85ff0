import assert from 'node:assert/strict'
import fc from 'fast-check'
import { longestAmountText, printNumber, printTurns, readAmount } from '../../../src/core/notation/amount'
import { busyMs } from '../../busyMs'

function reads(text: string, amount: number, rest = '') {
  assert.deepEqual(readAmount(text), { value: { amount, rest } }, text)
}

function refuses(text: string, suggestion?: string) {
  const reading = readAmount(text)
  assert.equal(reading.value, undefined, text)
  assert.ok(reading.value === undefined && reading.problem.length > 5, text)
  assert.equal(reading.value === undefined ? reading.suggestion : undefined, suggestion, text)
}

describe('an amount', () => {
  it('is a whole number, a decimal or a number from a script', () => {
    reads('3', 3)
    reads(' 12 ', 12)
    reads('1.75', 1.75)
    reads('.5', 0.5)
    reads('3.', 3)
    reads('0.30000000000000004', 0.30000000000000004)
    reads('1e3', 1000)
    reads('2.5e-3 mm', 0.0025, 'mm')
  })

  it('has a fraction in any of the ways people write one', () => {
    for (const text of ['1 3/4', '1-3/4', '1 - 3/4', '1  3/4', '1¾', '1 ¾', '1-¾', '1.75', '1\u00a03/4', '1 3⁄4', '1 3 / 4']) reads(text, 1.75)
    for (const text of ['3/4', '¾', '.75', '0 3/4']) reads(text, 0.75)
    reads('2½', 2.5)
    reads('11 1/6', 11 + 1 / 6)
    reads('1⅚', 1 + 5 / 6)
  })

  it('reads two figures before a fraction as they stand, never as one figure and a longer fraction', () => {
    reads('11 3/4', 11.75)
    reads('23 1/2 turns', 23.5, 'turns')
  })

  it('keeps its sign', () => {
    reads('-1', -1)
    reads('−1 1/2', -1.5)
    reads('+2.5 mm', 2.5, 'mm')
    reads('-¼', -0.25)
  })

  it('hands on what stands behind it', () => {
    reads('1 3/4 turns in', 1.75, 'turns in')
    reads('3out', 3, 'out')
    reads('5"', 5, '"')
    reads('3 1/2in', 3.5, 'in')
    reads('9.5N/mm', 9.5, 'N/mm')
  })

  // MT-09 rear shock: rebound 2 1/2 soft, 1 standard, 0 hard (motorcyclespecs.us, adjusting the shock absorber assembly).
  it('reads the turns of a published rebound table: 2½, 1, 0', () => {
    for (const [text, turns] of [['2½', 2.5], ['2 1/2', 2.5], ['1', 1], ['0', 0]] as const) reads(text, turns)
  })

  // XP560D service manual p. 3-26: 3 soft, 1.25 standard.
  it('reads the quarter turns of a published table: 3, 1.25', () => {
    reads('3', 3)
    reads('1.25', 1.25)
    reads('1 1/4', 1.25)
    assert.equal(printTurns(1.25), '1 1/4')
  })

  // A preload table by rider and luggage in half steps, 1.0 to 14.0 (serviceinfo.harley-davidson.com, Table 1).
  it('reads every half step from 1.0 to 14.0', () => {
    for (let half = 2; half <= 28; half++) reads((half / 2).toFixed(1), half / 2)
  })

  it('refuses a decimal comma and suggests the point, except where it may be a thousand', () => {
    refuses('1,5', '1.5')
    refuses('-2,25 turns in', '-2.25 turns in')
    refuses('1,400 mm')
    refuses('1,400,000')
    refuses('1,')
  })

  // 21/21 and 24/24 as "fully open" stand in the RR 4T workshop manual p. 20.
  it('takes 21/24 and 21 of 24 for a count and its total, which is the adjuster’s to know', () => {
    refuses('21/21', '21')
    refuses('24/24 out', '24 out')
    refuses('12/20 clicks', '12 clicks')
    refuses('13/4', '13')
    refuses('21 of 24', '21')
    refuses('21 of 24 clicks out', '21 clicks out')
  })

  it('refuses what is no number', () => {
    for (const text of ['', '   ', 'abc', 'x1/2', 'a 1/2', '/2', '½½', '1.2.3', '..5', '1/0', '1 1/0', '1 5/4', '--1', '1/2/3', 'NaN', 'Infinity', '1 2/5', ',5']) refuses(text)
  })

  it('refuses a number longer than any setting has, and any text longer than a cell, at once', () => {
    refuses('1234567890123456')
    for (const piece of ['1', ' ', '1 ', '1/', '-', '.', '¾', '1,', '1 1/2 ', '9 of ']) {
      const long = piece.repeat(2_000_000)
      assert.ok(busyMs(() => refuses(long)) < 500, piece)
    }
  })

  it('reads any short text without throwing and in no time', () => {
    const pieces = fc.constantFrom('1', '12', ' ', '/', '⁄', '-', '.', ',', '¾', 'of', 'e', '+', 'turns', 'in', '"', '−')
    fc.assert(fc.property(fc.array(pieces, { maxLength: 60 }), (parts) => {
      const text = parts.join('').slice(0, longestAmountText)
      let reading = readAmount('')
      assert.ok(busyMs(() => (reading = readAmount(text))) < 500, text)
      if (reading.value !== undefined) assert.ok(Number.isFinite(reading.value.amount))
    }), { numRuns: 2000 })
  })
})

describe('printNumber', () => {
  it('shows no float noise and no minus nought', () => {
    assert.equal(printNumber(0.1 + 0.2), '0.3')
    assert.equal(printNumber(-0.0001), '0')
    assert.equal(printNumber(12.3456), '12.346')
    assert.equal(printNumber(12.3456, 1), '12.3')
  })

  it('is read back as the same number, to the digits it shows', () => {
    fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
      const reading = readAmount(printNumber(value))
      assert.ok(reading.value && Math.abs(reading.value.amount - value) <= 0.0005 + 1e-9)
    }))
  })
})

describe('printTurns', () => {
  it('says halves, quarters, thirds, sixths and eighths as fractions', () => {
    const said = [[0.5, '1/2'], [1.75, '1 3/4'], [2 / 3, '2/3'], [1 / 6, '1/6'], [3 + 5 / 6, '3 5/6'], [0.125, '1/8'], [-0.5, '-1/2'], [-1.25, '-1 1/4'], [2, '2'], [0, '0'], [1.1, '1.1']] as const
    for (const [turns, words] of said) assert.equal(printTurns(turns), words)
  })

  it('is read back as the same turns', () => {
    fc.assert(fc.property(fc.integer({ min: -200, max: 200 }), fc.constantFrom(1, 2, 3, 4, 6, 8), fc.nat(7), (whole, below, above) => {
      const turns = whole + (above % below) / below
      const reading = readAmount(printTurns(turns))
      assert.ok(reading.value && Math.abs(reading.value.amount - turns) < 1e-9, printTurns(turns))
    }))
  })
})
