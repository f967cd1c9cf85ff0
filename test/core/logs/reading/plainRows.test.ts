import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { Dialect } from '../../../../src/core/logs/reading/dialect'
import { plainRows } from '../../../../src/core/logs/reading/plainRows'
import { bytes, readAll } from './readAll'

const layout = (columns: readonly number[], rows = 4) => ({ slotOf: Int32Array.from(columns), slots: columns.filter((slot) => slot >= 0).length, rows })
const comma = { separator: 44, decimal: 46 }

/** Where reading a text stopped, and the numbers until there by slot. */
function read(text: string, columns: readonly number[], marks = comma): { rest: string; slots: number[][] } {
  const quick = plainRows(layout(columns), marks)!
  quick.begin(bytes(text), text.length)
  const rest = text.slice(quick.read(0, 0))
  return { rest, slots: quick.slots.map((slot) => [...slot.subarray(0, quick.count())]) }
}

/** Does some work in a host that has no WebAssembly. */
function without<T>(work: () => T): T {
  const host = globalThis as { WebAssembly?: unknown }
  const there = host.WebAssembly
  host.WebAssembly = undefined
  try {
    return work()
  } finally {
    host.WebAssembly = there
  }
}

describe('plain rows', () => {
  it('are read to the last one that is whole, into the slots of their columns', () => {
    assert.deepEqual(read('1,2,3\n4,-5.25,  6.5\r\n7,8', [1, -1, 0]), { rest: '7,8', slots: [[3, 6.5], [1, 4]] })
    assert.deepEqual(read('1;2,5;\n3;4,5;\r\n', [0, 1], { separator: 59, decimal: 44 }), { rest: '', slots: [[1, 3], [2.5, 4.5]] })
  })

  it('are read until the slots are full', () => {
    assert.deepEqual(read('1\n2\n3\n4\n5\n', [0]), { rest: '5\n', slots: [[1, 2, 3, 4]] })
  })

  it('end before whatever else there may be', () => {
    for (const row of ['# 1,2', '', '\r', '1', '1,2,3', '1,', ',2', '1,x', '1,"2"', '"1",2', '1,2 ', '1,1e3', '1,+2', '1,1234567890123456', '1,2.3.4', '1,-', '1,.', '1,\0', '1\0,2', '1\r,2']) {
      assert.deepEqual(read(`7,8\n${row}\n9,9\n`, [0, 1]), { rest: `${row}\n9,9\n`, slots: [[7], [8]] }, JSON.stringify(row))
    }
    assert.deepEqual(read('1,2\n"a",4\n', [-1, 0]), { rest: '"a",4\n', slots: [[2]] })
  })

  it('are not tried again and again where no row is plain', () => {
    const quick = plainRows(layout([0, 1]), comma)!
    const text = bytes('"1",2\n'.repeat(50) + '3,4\n'.repeat(50))
    quick.begin(text, text.length)
    const at = (row: number) => quick.read(6 * row, 0)
    for (let row = 0; row < 4; row++) assert.equal(at(row), 6 * row)
    // It was tried with the first, the second and the fourth row; the next three of them are left to others, plain or not.
    for (let turn = 0; turn < 3; turn++) assert.equal(quick.read(300, 0), 300)
    assert.equal(quick.read(300, 0), 316)
  })

  it('of too many columns, or where a host lets no program be compiled, are nothing for it', () => {
    assert.equal(plainRows(layout(Array.from({ length: 10_001 }, () => -1)), comma), undefined)
    assert.equal(without(() => plainRows(layout([0]), comma)), undefined)
  })

  it('make the same of any table as reading field by field does, to the last bit', () => {
    const number = fc.oneof(
      { weight: 8, arbitrary: fc.tuple(fc.integer({ min: -99999, max: 99999 }), fc.nat(999999)).map(([a, b]) => `${a}.${b}`) },
      { weight: 2, arbitrary: fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }).map(String) },
      fc.constantFrom('', '-0', '.5', '5.', '-', '1e3', 'x', '"2"', '"', ' 7', '7 ', '123456789012345', '1234567890.12345', '12:30:01.5', 'NaN', '\0'),
    )
    const row = fc.oneof({ weight: 9, arbitrary: fc.tuple(number, number, number).map((fields) => fields.join(',')) }, fc.constantFrom('', '# a,b', '1,2', '1,2,3,4', '1,2,3,', '1,2,3, ', ' '))
    fc.assert(fc.property(fc.array(fc.tuple(row, fc.constantFrom('\n', '\n', '\r\n')), { maxLength: 40 }), fc.integer({ min: 1, max: 90 }), fc.boolean(), fc.nat(2), (rows, chunk, quoted, clock) => {
      const dialect: Dialect = { separator: ',', decimal: '.', quoted, columns: [{ name: 'a' }, { name: 'b' }, { name: 'c' }], dataLine: 1, dataOffset: 0 }
      const text = rows.map(([fields, end]) => fields + end).join('')
      const made = () => {
        const { rows, lines, reader } = readAll(text, { chunk, dialect, columns: [2, 0], clocks: clock === 0 ? [0] : [] })
        return { rows, lines, tally: reader.tally, problem: reader.problem() }
      }
      assert.deepEqual(made(), without(made))
    }), { numRuns: 300 * Number(process.env['DETENT_RUNS'] ?? 1) })
  })
})
