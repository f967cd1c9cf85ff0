import assert from 'node:assert/strict'
import fc from 'fast-check'
import { printPosition, readPosition, type End, type Position } from '../../../src/core/notation/position'
import { findUnit, units } from '../../../src/core/notation/units'
import { busyMs } from '../../busyMs'

function position(amount: number, symbol?: string, end?: End): Position {
  return { amount, ...(symbol === undefined ? {} : { unit: findUnit(symbol)! }), ...(end === undefined ? {} : { end }) }
}

function reads(text: string, expected: Position) {
  assert.deepEqual(readPosition(text), { value: expected }, text)
}

function refuses(text: string, suggestion?: string) {
  const reading = readPosition(text)
  assert.equal(reading.value, undefined, text)
  assert.equal(reading.value === undefined ? reading.suggestion : undefined, suggestion, text)
}

describe('a position', () => {
  it('is a bare count, a count and its end, or a count, its unit and its end', () => {
    reads('3', position(3))
    reads('3 out', position(3, undefined, 'closed'))
    reads('3 in', position(3, undefined, 'open'))
    reads('3 clicks out', position(3, 'clicks', 'closed'))
    reads('1 click out', position(1, 'clicks', 'closed'))
    reads('1 3/4 turns in', position(1.75, 'turns', 'open'))
    reads('½ turn out', position(0.5, 'turns', 'closed'))
    reads('4 flats in', position(4, 'flats', 'open'))
    reads('3 rings', position(3, 'rings'))
    reads('2.5 lines', position(2.5, 'lines'))
    reads('12 mm', position(12, 'mm'))
    reads('8.5 bar', position(8.5, 'bar'))
    reads('-1 out', position(-1, undefined, 'closed'))
  })

  it('may have the unit in front of a number of its own', () => {
    for (const text of ['step 4', 'Step 4', 'position 4', 'steps 4', '4 steps', '4 notches', 'notch 4']) reads(text, position(4, 'steps'))
    for (const text of ['dial 3', 'number 3', 'no. 3', 'no 3', '3 dial']) reads(text, position(3, 'dial'))
    reads('click 12 out', position(12, 'clicks', 'closed'))
    reads('dial 2½', position(2.5, 'dial'))
    refuses('step 4 mm')
  })

  it('says the end it is counted from in any of the trade’s ways', () => {
    for (const words of ['out', 'OUT', 'out from closed', 'from closed', 'from fully closed', 'out from fully closed', 'back from closed', 'out from fully in']) {
      reads(`3 clicks ${words}`, position(3, 'clicks', 'closed'))
      reads(`3 ${words}`, position(3, undefined, 'closed'))
    }
    for (const words of ['in', 'in from open', 'from open', 'in from fully open', 'in from fully backed off', 'from backed off']) {
      reads(`2 turns ${words}`, position(2, 'turns', 'open'))
    }
  })

  it('can be an end itself', () => {
    for (const text of ['closed', 'Closed', 'fully closed', 'fully  in', 'seated']) reads(text, position(0, undefined, 'closed'))
    for (const text of ['open', 'fully open', 'fully out', 'backed off', 'fully backed off']) reads(text, position(0, undefined, 'open'))
    reads('flush', position(0, 'mm'))
  })

  it('never shares what it hands out', () => {
    const first = readPosition('closed')
    first.value!.amount = 5
    reads('closed', position(0, undefined, 'closed'))
  })

  it('takes `in` for the direction, and for the inch only where the thing has no ends', () => {
    reads('5 in', position(5, undefined, 'open'))
    assert.deepEqual(readPosition('5 in', true), { value: position(5, 'inch') })
    reads('5 inch', position(5, 'inch'))
    reads('5 inch in', position(5, 'inch', 'open'))
    reads('5"', position(5, 'inch'))
  })

  it('reads every spelling of every unit, with and without an end', () => {
    for (const unit of units) {
      for (const spelling of unit.spellings) {
        for (const written of [spelling, spelling.toUpperCase()]) {
          assert.deepEqual(readPosition(`2 ${written}`), { value: { amount: 2, unit } }, written)
          assert.deepEqual(readPosition(`2 ${written} out`), { value: { amount: 2, unit, end: 'closed' } }, written)
        }
      }
    }
  })

  it('is printed so that reading gives the same again, in every unit and from every end', () => {
    const amounts = fc.oneof(
      fc.integer({ min: -40, max: 40 }),
      fc.integer({ min: -4000, max: 4000 }).map((thousandths) => thousandths / 1000),
      fc.tuple(fc.nat(12), fc.constantFrom(2, 3, 4, 6, 8)).map(([whole, below]) => whole + 1 / below),
    )
    const end = fc.constantFrom<End | undefined>('closed', 'open', undefined)
    fc.assert(fc.property(amounts, fc.option(fc.constantFrom(...units), { nil: undefined }), end, (amount, unit, from) => {
      const written: Position = { amount, ...(unit ? { unit } : {}), ...(from ? { end: from } : {}) }
      const text = printPosition(written)
      const again = readPosition(text)
      assert.ok(again.value, text)
      assert.equal(again.value.unit, unit, text)
      assert.equal(again.value.end, from, text)
      assert.ok(Math.abs(again.value.amount - amount) <= 0.0005 + 1e-9, text)
      assert.equal(printPosition(again.value), text)
    }), { numRuns: 2000 })
  })

  it('is printed as it is said', () => {
    const said: [Position, string][] = [
      [position(1, 'clicks', 'closed'), '1 click out'], [position(3, 'clicks', 'closed'), '3 clicks out'], [position(0, 'clicks', 'closed'), '0 clicks out'],
      [position(1.75, 'turns', 'open'), '1 3/4 turns in'], [position(0.5, 'turns', 'closed'), '1/2 turn out'], [position(1, 'turns', 'open'), '1 turn in'],
      [position(4, 'flats', 'open'), '4 flats in'], [position(1, 'rings'), '1 ring'], [position(12, 'mm'), '12 mm'], [position(4, 'steps'), 'step 4'],
      [position(3, 'dial'), 'dial 3'], [position(3, undefined, 'closed'), '3 out'], [position(3), '3'],
    ]
    for (const [value, words] of said) assert.equal(printPosition(value), words)
  })

  it('suggests what was meant', () => {
    refuses('3 cliks out', '3 clicks out')
    refuses('1.5 trns in', '1 1/2 turns in')
    refuses('3 ot', '3 out')
    refuses('3 clicks oot', '3 clicks out')
    refuses('3 from clsed')
    refuses('1,5 turns', '1.5 turns')
    refuses('21 of 24', '21')
  })

  it('is where it stands, never by how much it changed', () => {
    refuses('+2')
    refuses('+2 clicks out')
  })

  it('refuses what it does not understand', () => {
    for (const text of ['', 'three', 'out', 'out 3', '3 bananas', '3 out of the box', '3 clockwise', 'constructor', '__proto__', '3 4', 'toString out']) refuses(text)
  })

  it('refuses a long text at once, and does not repeat it in the message', () => {
    for (const text of ['step '.repeat(1e6), `3${' '.repeat(5e6)}out`, `3 ${'clicks '.repeat(1e6)}`, '1 '.repeat(1e6)]) {
      let reading = readPosition('')
      assert.ok(busyMs(() => (reading = readPosition(text))) < 500)
      assert.ok(reading.value === undefined && reading.problem.length < 200)
    }
  })

  it('never throws, whatever is written', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 130 }), fc.boolean(), (text, inch) => { readPosition(text, inch) }), { numRuns: 2000 })
    const words = fc.constantFrom('3', '1 3/4', 'clicks', 'turns', 'in', 'out', 'from', 'closed', 'step', '"', 'mm', '-', 'of', 'no.', '½')
    fc.assert(fc.property(fc.array(words, { maxLength: 12 }), (parts) => { readPosition(parts.join(' ')) }), { numRuns: 3000 })
  })
})
