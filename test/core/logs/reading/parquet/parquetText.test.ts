import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import type { FileMetaData, SchemaElement } from 'hyparquet/src/types.js'
import { parquetWriteBuffer } from 'hyparquet-writer'
import { analyseLog, type LogReport } from '../../../../../src/core/logs/analyseLog'
import { textColumns, unreadColumns } from '../../../../../src/core/logs/reading/parquet/columnText'
import { describeDialect } from '../../../../../src/core/logs/reading/dialect'
import { makeRide } from '../../generateLog'
import { aParquet, linesOf } from './aParquet'

const ride = makeRide({ rows: 4500, rateHz: 200, front: { middle: 45, reach: 70, most: 118.5 }, rear: { middle: 40, reach: 60, most: 128 } })
const column = <Name extends keyof (typeof ride)[number]>(name: Name) => ride.map((row) => row[name])
const columns = [
  { name: 'Time', data: Float64Array.from(column('time')), type: 'DOUBLE' as const }, { name: 'Fork', data: Float64Array.from(column('front')), type: 'DOUBLE' as const },
  { name: 'Shock', data: Float32Array.from(column('rear')), type: 'FLOAT' as const }, { name: 'Lap', data: Int32Array.from(column('lap')), type: 'INT32' as const },
]
const mapping = { time: { column: 'Time', unit: 's' as const }, front: { column: 'Fork', unit: 'mm' }, rear: { column: 'Shock', unit: 'mm' }, lap: { column: 'Lap' } }
const facts = { front: { travelMm: 120 }, rear: { travelMm: 130 } }

function reportOn(text: string): LogReport {
  const analysis = analyseLog({ mapping, facts })
  analysis.feed(new TextEncoder().encode(text))
  return analysis.end()
}

describe('a Parquet file', () => {
  it('says the same as its columns written as CSV, to the last bit', async () => {
    const csv = ['Time,Fork,Shock,Lap', ...ride.map(({ time, front, rear, lap }) => `${time},${front},${Math.fround(rear)},${lap}`), ''].join('\n')
    const [asParquet, asCsv] = [reportOn(`${(await linesOf(aParquet(columns))).join('\n')}\n`), reportOn(csv)]
    assert.equal(asCsv.problem, undefined)
    assert.deepEqual(asParquet.statistics, asCsv.statistics)
    assert.equal((await linesOf(aParquet(columns))).length, 4500 + 2)
    assert.deepEqual(asParquet.notes, asCsv.notes)
    assert.deepEqual(asParquet.dialect!.columns, asCsv.dialect!.columns)
    assert.equal(describeDialect(asParquet.dialect!), '4 columns of a Parquet file, as lines of text, headings in line 2, numbers from line 3')
  })

  it('has whole numbers of any length, missing samples, switches and words as text has them', async () => {
    const lines = await linesOf(aParquet([
      { name: 'Long', data: [1n, 9007199254740993n, -3n], type: 'INT64' }, { name: 'Fork', data: [1.5, null, NaN], type: 'DOUBLE', nullable: true },
      { name: 'Brake', data: [true, false, true], type: 'BOOLEAN' }, { name: 'Clock', data: ['14:03:22.125', 'a\tb\n"c"', '#'], type: 'STRING' },
    ]))
    assert.deepEqual(lines, ['# columns of a Parquet file', 'Long\tFork\tBrake\tClock', '1\t1.5\t1\t14:03:22.125', '9007199254740993\t\t0\ta b  c ', '-3\tNaN\t1\t '])
  })

  it('has times as seconds, finer than a double of seconds since 1970', async () => {
    const start = 1_782_000_000_123_456_789n
    const schema = [{ name: 'root', num_children: 2 }, { name: 'When', type: 'INT64' as const, repetition_type: 'REQUIRED' as const, logical_type: { type: 'TIMESTAMP' as const, isAdjustedToUTC: true, unit: 'NANOS' as const } },
      { name: 'Since', type: 'INT64' as const, repetition_type: 'REQUIRED' as const, logical_type: { type: 'TIME' as const, isAdjustedToUTC: true, unit: 'MICROS' as const } }]
    const file = new Uint8Array(parquetWriteBuffer({ schema, columnData: [{ name: 'When', data: [start, start + 1000n, start + 86_400_000_000_000n] }, { name: 'Since', data: [0n, 5000n, 1_000_001n] }] }))
    const [, headings, units, ...rows] = await linesOf(file)
    assert.deepEqual([headings, units], ['When\tSince', 's\ts'])
    const [first, second, third] = rows.map((line) => line.split('\t').map(Number))
    assert.deepEqual([first![1], second![1], third![1]], [0, 0.005, 1.000001])
    assert.ok(Math.abs(second![0]! - first![0]! - 1e-6) < 1e-11)
    assert.ok(Math.abs(third![0]! - first![0]! - 86_400) < 1e-9)
  })

  it('has headings that no reader takes for something else', async () => {
    const data = [1, 2]
    const [, headings] = await linesOf(aParquet(['#fork', '12', 'a\tb', 'Fork, left'].map((name) => ({ name, data, type: 'INT32' as const }))))
    assert.equal(headings, 'column 1\tcolumn 2\ta b\tFork, left')
  })

  it('is read without its columns of lists and structures, which are named', async () => {
    const required = { repetition_type: 'REQUIRED' as const }
    const schema = [
      { name: 'root', num_children: columns.length + 1 },
      { name: 'gps\tfix', num_children: 2, ...required }, { name: 'Fork', type: 'DOUBLE' as const, ...required }, { name: 'lon', type: 'DOUBLE' as const, ...required },
      ...columns.map(({ name, type }) => ({ name, type, ...required })),
    ]
    const gps = { name: 'gps\tfix', data: ride.map(() => ({ Fork: 1, lon: 2 })) }
    const file = new Uint8Array(parquetWriteBuffer({ schema, columnData: [gps, ...columns.map(({ name, data }) => ({ name, data }))] }))
    const lines = await linesOf(file)
    assert.deepEqual(lines.slice(1, 3), ['# columns with several values a row, not read:\tgps fix', 'Time\tFork\tShock\tLap'])
    const [report, plain] = [reportOn(`${lines.join('\n')}\n`), reportOn(`${(await linesOf(aParquet(columns))).join('\n')}\n`)]
    assert.deepEqual(report.statistics, plain.statistics)
    assert.deepEqual(report.notes, ['columns that hold several values a row are not read: gps fix', ...plain.notes])
    assert.match(describeDialect(report.dialect!), /^4 columns of a Parquet file/)
    const list: SchemaElement[] = [{ name: 'root', num_children: 2 }, { name: 'Fork', type: 'DOUBLE', ...required }, { name: 'raw', type: 'INT32', repetition_type: 'REPEATED' }]
    assert.deepEqual(unreadColumns({ schema: list } as FileMetaData), ['raw'])
    assert.deepEqual(textColumns({ schema: list } as FileMetaData).map(({ heading }) => heading), ['Fork'])
  })

  it('is refused in a sentence where it is cut anywhere or changed', async () => {
    const whole = aParquet(columns)
    for (let cut = 0; cut < whole.length; cut += 997) await assert.rejects(linesOf(whole.slice(0, cut)), /^Error: this Parquet file is broken or cut short$/)
    let seed = 7
    for (let turn = 0; turn < 150; turn++) {
      const changed = whole.slice()
      for (let times = 0; times < 3; times++) {
        seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
        changed[turn % 2 === 0 ? seed % whole.length : whole.length - 1 - (seed % 900)] = seed >>> 24
      }
      await linesOf(changed).then((lines) => assert.ok(lines.length > 0), (error: Error) => assert.match(error.message, /^this Parquet file is (?:broken or cut short|packed by)/))
    }
  }).timeout(20_000)

  it('is read as pyarrow 25 writes it, packed by Zstandard', async () => {
    const [, headings, units, ...rows] = await linesOf(readFileSync('test/fixtures/logs/zstandard.parquet'))
    assert.deepEqual([headings, units], ['Time\tFork\tShock\tWhen', '\t\t\ts'])
    assert.deepEqual(rows, Array.from({ length: 400 }, (_, at) => [at / 200, at % 100 === 7 ? '' : ((at * 37) % 90) / 2, ((at * 11) % 64) / 4, (123_456_789 + at * 5_000_000) / 1e9].join('\t')))
  })

  it('may have no rows', async () => {
    assert.deepEqual((await linesOf(aParquet([{ name: 'Time', data: [], type: 'DOUBLE' }]))).slice(1), ['Time'])
  })

  it('is refused where it is packed in a way that is not read', async () => {
    const packed = new Uint8Array(parquetWriteBuffer({ columnData: columns, codec: 'GZIP', compressors: { GZIP: (bytes) => bytes } }))
    await assert.rejects(linesOf(packed), /packed by GZIP, .* write it with Snappy or Zstandard, or save it as CSV/)
  })
})
