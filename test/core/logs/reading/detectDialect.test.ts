import assert from 'node:assert/strict'
import { detectDialect } from '../../../../src/core/logs/reading/detectDialect'
import { describeDialect } from '../../../../src/core/logs/reading/dialect'
import { isLogProblem, told } from '../../../../src/core/logs/problem'
import { bytes, dialectOf } from './readAll'

const rows = (make: (i: number) => string, count = 20) => Array.from({ length: count }, (_, i) => `${make(i)}\n`).join('')

function problemOf(text: string | Uint8Array, whole = true): string {
  const found = detectDialect(typeof text === 'string' ? bytes(text) : text, whole)
  assert.ok(isLogProblem(found), JSON.stringify(found))
  return told(found)
}

describe('detectDialect', () => {
  it('finds comma, semicolon and tab, and says what it found', () => {
    assert.equal(describeDialect(dialectOf(`Time,Fork,Shock\n${rows((i) => `${i / 100},12.5,8.25`)}`)), '3 columns separated by comma, decimal point, headings in line 1, numbers from line 2')
    assert.equal(describeDialect(dialectOf(`Zeit;Gabel;Heck\n${rows((i) => `0,0${i};12,5;8,25`)}`)), '3 columns separated by semicolon, decimal comma, headings in line 1, numbers from line 2')
    assert.equal(describeDialect(dialectOf(`Time\tFork\n${rows((i) => `${i},5\t12,5`)}`)), '2 columns separated by tab, decimal comma, headings in line 1, numbers from line 2')
  })

  it('passes over lines before the headings, with a unit line or without, and blank lines between', () => {
    const found = dialectOf(`"Logger export"\nVenue: Saltmarsh Ring, dry\nRate,200\n\nTime,Fork,Brake F\ns,mm,bar\n\n${rows((i) => `${i / 200},12.5,0.1`)}`)
    assert.deepEqual(found.columns, [{ name: 'Time', unit: 's' }, { name: 'Fork', unit: 'mm' }, { name: 'Brake F', unit: 'bar' }])
    assert.deepEqual([found.headerLine, found.unitLine, found.dataLine], [5, 6, 8])
  })

  it('takes a unit in brackets, and headings in a remark', () => {
    assert.deepEqual(dialectOf(`Time [s];Gabel (mm)\n${rows((i) => `${i};12,5`)}`).columns, [{ name: 'Time [s]', unit: 's' }, { name: 'Gabel (mm)', unit: 'mm' }])
    const remark = dialectOf(`# made by a script\n# time,fork\n${rows((i) => `${i},12.5`)}`)
    assert.deepEqual([remark.columns.map(({ name }) => name), remark.headerLine], [['time', 'fork'], 2])
  })

  it('lets no heading act on a terminal', () => {
    assert.equal(dialectOf(`Time,\u001b[31mFork\u0007\n${rows((i) => `${i},12.5`, 200)}`).columns[1]!.name, '[31mFork')
  })

  it('numbers the columns of a table without headings', () => {
    const found = dialectOf(rows((i) => `${i},12.5`))
    assert.deepEqual([found.columns.map(({ name }) => name), found.headerLine, found.dataLine], [['column 1', 'column 2'], undefined, 1])
  })

  it('knows quotes, CRLF, a byte order mark, Latin-1 units and a separator at the end of every line', () => {
    const quoted = dialectOf(`\ufeff"Time","Fork, left"\r\n${rows((i) => `"${i},5","12,5"\r`)}`)
    assert.deepEqual([quoted.quoted, quoted.decimal, quoted.columns.map(({ name }) => name)], [true, ',', ['Time', 'Fork, left']])
    const latin = Uint8Array.from(Buffer.from(`t;T\n s;\xb0C\n${rows((i) => `${i},5;20,5`)}`, 'latin1'))
    assert.equal(dialectOf(latin).columns[1]!.unit, '°C')
    assert.equal(dialectOf(`Time,Fork\n${rows((i) => `${i},12.5,`)}`).columns.length, 3)
  })

  it('finds the columns of a clock time and keeps columns of words', () => {
    const found = dialectOf(`Time,Note,Fork\n${rows((i) => `14:03:${20 + i}.125,ok,12.5`)}`)
    assert.deepEqual([found.separator, found.columns.length, found.dataLine], [',', 3, 2])
  })

  it('finds the table where some samples of it are missing', () => {
    assert.equal(dialectOf(`Time,Fork,Brake\n${rows((i) => `${i},12.5,${i % 4 === 0 ? '1.5' : ''}`)}`).dataLine, 2)
    assert.equal(dialectOf(`Time,Fork\n${rows((i) => `${i},${i % 3 === 0 ? 'NaN' : '1.5'}`)}`).dataLine, 2)
  })

  it('says what is wrong with a file that is no table, and in which line', () => {
    assert.match(problemOf(''), /empty/)
    assert.match(problemOf('# a\n\n'), /nothing in this file/)
    assert.match(problemOf(rows((i) => `${i}.5`)), /^line 1: there is only one column/)
    assert.match(problemOf('Dear all,\nplease find the log attached.\n'), /no table of numbers/)
    assert.match(problemOf(Uint8Array.from({ length: 4000 }, (_, i) => (i * 37) % 256)), /binary/)
    assert.match(problemOf(Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0])), /export it as CSV/)
    assert.match(problemOf(Uint8Array.from([0x1f, 0x8b, 8, 0])), /gzip/)
    for (const [mark, kind] of [['PAR1\u0015\u0004', 'Parquet'], ['ARROW1\0\0', 'Arrow'], ['\u00ff\u00ff\u00ff\u00ff\0\u0001', 'Arrow']] as const) {
      assert.match(problemOf(Uint8Array.from(Buffer.from(`${mark}${'a,1\n'.repeat(400)}`, 'latin1'))), new RegExp(`^this is a file of ${kind}, .* save it as CSV`))
    }
    assert.equal(dialectOf(`PAR1,ARROW1\n${rows((i) => `${i},1.5`)}`).columns[0]!.name, 'PAR1')
    assert.match(problemOf(Uint8Array.from(Buffer.from('\ufeffTime,Fork\n1,2\n', 'utf16le'))), /UTF-16/)
    assert.match(problemOf('Time,Fork\r1,2\r2,3\r'), /carriage return/)
    assert.match(problemOf('1,'.repeat(40_000), false), /^line 1: .*64 kB/)
  })

  it('sees a comma that stands both between columns and inside numbers', () => {
    assert.match(problemOf(`Time,Fork,Shock\n${rows((i) => `0,0${i % 10},12,5,8,25`)}`), /^line 2: 3 headings in line 1, but 6 values: the comma/)
  })
})
