import assert from 'node:assert/strict'
import fc from 'fast-check'
import { told } from '../../../../src/core/logs/problem'
import type { Dialect } from '../../../../src/core/logs/reading/dialect'
import { clockSeconds } from '../../../../src/core/logs/reading/clock'
import { bytes, dialectOf, readAll } from './readAll'

const table = (...lines: string[]) => ['Time,Fork', ...Array.from({ length: 60 }, (_, i) => `${i},1.5`), ...lines, ''].join('\n')
const behind = (...lines: string[]) => {
  const read = readAll(table(...lines))
  return { ...read, rows: read.rows.slice(60) }
}
const plain: Dialect = { separator: ',', decimal: '.', quoted: false, columns: [{ name: 'a' }, { name: 'b' }], dataLine: 1, dataOffset: 0 }

describe('readTable', () => {
  it('reads numbers as Number does, to the last bit, in any chunks', () => {
    const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }).map(String), fc.integer().map(String), fc.tuple(fc.integer({ min: -99999, max: 99999 }), fc.nat(999999)).map(([a, b]) => `${a}.${b}`), fc.bigInt({ min: 0n, max: 10n ** 20n }).map(String), fc.constantFrom('.5', '5.', '+3', '-0.125', '007', '1e3', '-2.5E-3', ' 4', '4 '))
    fc.assert(fc.property(fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 20 }), fc.integer({ min: 1, max: 40 }), fc.constantFrom('\n', '\r\n'), (rows, chunk, end) => {
      const text = rows.map((row) => row.join(',') + end).join('')
      const read = readAll(text, { chunk, dialect: plain })
      assert.deepEqual(read.rows, rows.map((row) => row.map(Number)))
    }), { numRuns: 300 })
  })

  it('takes a quote that is never closed for a slip of its own field, and ends', () => {
    for (const chunk of [1, 7, 4096]) {
      const { rows, lines } = readAll('60,"1.5\n61,1.5\n62,"2.5"\n63,2\n64,"', { chunk, dialect: plain })
      assert.deepEqual([rows, lines], [[[60, NaN], [61, 1.5], [62, 2.5], [63, 2]], [1, 2, 3, 4]])
    }
    for (const chunk of [1, 7, 4096]) assert.deepEqual(readAll(`"a",b\n"1",2\n"3,4\n5,6\n`, { chunk, dialect: { ...plain, quoted: true, dataOffset: 6 } }).rows, [[1, 2]])
  })

  it('reads what another way of writing says the same: separators, decimal commas, quotes, CRLF', () => {
    const numbers = Array.from({ length: 40 }, (_, i) => [i / 8, -1.25 * (i + 1), 1e6 + i])
    for (const separator of [',', ';', '\t']) {
      for (const decimal of separator === ',' ? ['.'] : ['.', ',']) {
        for (const quote of ['', '"']) {
          for (const end of ['\n', '\r\n']) {
            const text = [['a', 'b', 'c'], ...numbers.map((row) => row.map((value) => String(value).replace('.', decimal)))].map((row) => row.map((field) => quote + field + quote).join(separator) + end).join('')
            for (const chunk of [3, 64, 1 << 16]) assert.deepEqual(readAll(text, { chunk }).rows, numbers, JSON.stringify([separator, decimal, quote, end, chunk]))
          }
        }
      }
    }
  })

  it('reads decimal commas inside quotes between commas, and line ends inside quotes', () => {
    const { rows, lines } = readAll('t,x,note\n"0,5","12,25","all\nwell"\n"1,5","13,5","a ""b"", c"\n"2,5","14","ok"\n')
    assert.deepEqual(rows.map((row) => row.slice(0, 2)), [[0.5, 12.25], [1.5, 13.5], [2.5, 14]])
    assert.deepEqual(lines, [2, 4, 5])
  })

  it('counts what is missing, no number, infinite or of the other mark, with the first line, and makes NaN of it', () => {
    const { rows, reader } = behind('60,', '61,NaN', '62,n/a', '63,inf', '64,-Infinity', '65,1e999', '66,12x', '67,"1.5"', '68,0x10')
    assert.deepEqual(rows.map(([, x]) => x), [NaN, NaN, NaN, NaN, NaN, NaN, NaN, 1.5, NaN])
    const { missing, infinite, notNumbers } = reader.tally
    assert.deepEqual([missing[1], infinite[1], notNumbers[1]], [{ times: 3, firstLine: 62 }, { times: 3, firstLine: 65 }, { times: 2, firstLine: 68 }])
    const mixed = readAll(`t;x\n${Array.from({ length: 20 }, (_, i) => `${i}.5;1.25\n`).join('')}20.5;1,25\n`)
    assert.deepEqual([mixed.rows.at(-1), mixed.reader.tally.otherMark[1]], [[20.5, NaN], { times: 1, firstLine: 22 }])
  })

  it('leaves out lines of another width and counts them; too many end the reading with the line', () => {
    const { rows, reader } = behind('60,1,5', '61', '62,2.5', '63,1.5,')
    assert.deepEqual(rows, [[62, 2.5], [63, 1.5]])
    assert.deepEqual(reader.tally.ragged, { times: 2, firstLine: 62 })
    const bad = readAll(`${'1,2.5\n'.repeat(300)}${'1,2,3\n'.repeat(40)}`)
    assert.match(told(bad.reader.problem()!), /^line 321: 3 fields, and there are 2 columns; 21 lines are so, the first is line 301$/)
  })

  it('passes over blank lines and remarks and keeps count of the lines', () => {
    const { rows, lines, reader } = behind('', '# lap 2', '70,2.5')
    assert.deepEqual([rows, lines.at(-1), reader.tally.remarks], [[[70, 2.5]], 64, 2])
  })

  it('leaves out a last line without a line end, whatever it holds, and says so', () => {
    const read = readAll('t,x\n0,1.5\n1,1.5\n2,1.')
    assert.deepEqual([read.rows, read.reader.tally.cutLastLine], [[[0, 1.5], [1, 1.5]], true])
    assert.equal(readAll('t,x\n0,1.5\n1,1.5\n').reader.tally.cutLastLine, false)
  })

  it('ends with the line where a line never ends, or a quote is never closed', () => {
    const read = readAll(new Uint8Array([...bytes(table()), ...new Uint8Array(3 << 20).fill(49)]))
    assert.match(told(read.reader.problem()!), /^line 62: this line is longer than 1 MB/)
    const quoted = `"t","x"\n${'"1","2"\n'.repeat(30)}"3","4\n${'"1","2"\n'.repeat(300_000)}`
    assert.match(told(readAll(quoted, { dialect: dialectOf(quoted.slice(0, 1000)) }).reader.problem()!), /a quote is opened/)
  })

  it('never throws and never gives infinity, whatever the bytes', () => {
    const junk = fc.uint8Array({ maxLength: 300 })
    fc.assert(fc.property(junk, fc.integer({ min: 1, max: 50 }), fc.boolean(), (data, chunk, quoted) => {
      const { rows } = readAll(data, { chunk, dialect: { ...plain, quoted } })
      assert.ok(rows.flat().every((value) => Number.isNaN(value) || Number.isFinite(value)))
    }), { numRuns: 300 })
  })
})

describe('clockSeconds', () => {
  it('reads times of day and ISO 8601, and nothing that could be two things', () => {
    assert.equal(clockSeconds('14:03:22.125'), 50602.125)
    assert.equal(clockSeconds('00:00:00,5'), 0.5)
    assert.equal(clockSeconds('12:34.5'), 754.5)
    assert.equal(clockSeconds('2026-04-18T14:03:22.5Z'), Date.UTC(2026, 3, 18, 14, 3, 22) / 1000 + 0.5)
    assert.equal(clockSeconds('1970-01-01 00:00:01'), 1)
    for (const field of ['12:34', '12', '', '12:99:00', '25:00:00', '1:2:3:4', 'noon']) assert.equal(clockSeconds(field), undefined, field)
  })

  it('is read in its column', () => {
    const read = readAll(`Time,Fork\n${Array.from({ length: 5 }, (_, i) => `14:03:2${i}.125,1.5\n`).join('')}`, { clocks: [0] })
    assert.deepEqual(read.rows.map(([t]) => t), [50600.125, 50601.125, 50602.125, 50603.125, 50604.125])
  })
})
