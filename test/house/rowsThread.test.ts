import assert from 'node:assert/strict'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import { analyseLog, planLog, type LogPlan } from '../../src/core/logs/analyseLog'
import { startRows, type RowsThread } from '../../src/cli/rowsThread'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const script = join(folder, 'cli.cjs')
const log = join(folder, 'log.csv')
// Long enough for many messages, with a hole and a line too wide.
const lines = Array.from({ length: 200_000 }, (_, at) => `${(at / 1000).toFixed(3)},${(60 + 40 * Math.sin(at / 90)).toFixed(2)},${at === 5000 ? '' : (50 + (at % 60)).toFixed(1)}${at === 70_000 ? ',1' : ''}\n`)
const request = { mapping: { time: { column: 1 }, front: { column: 2 }, rear: { column: 3 } }, facts: { front: { travelMm: 120 }, rear: { travelMm: 130 } } }

describe('startRows', () => {
  before(() => {
    buildSync({ entryPoints: ['src/cli/main.ts'], outfile: script, bundle: true, platform: 'node', format: 'cjs', target: 'es2022', logLevel: 'error' })
    writeFileSync(log, lines.join(''))
  })
  after(() => rmSync(folder, { recursive: true }))

  /** Reads on a thread that has ended when it is told. */
  const read = async (...args: Parameters<RowsThread['read']>) => {
    const thread = startRows(script)
    try {
      return await thread.read(...args)
    } finally {
      await thread.stop()
    }
  }
  const plan = () => planLog(readFileSync(log).subarray(0, 65_536), false, request) as LogPlan

  it('leads to the same report as one thread does', async () => {
    const analysis = analyseLog(request)
    analysis.feed(readFileSync(log))
    const { dialect, wanted, take, wantsMore, end } = plan()
    const reading = await read({ path: log, dialect, wanted }, (block) => {
      take(block)
      return wantsMore()
    })
    const report = end(reading!.tally, reading!.problem)
    assert.deepEqual(report, analysis.end())
    assert.equal(report.statistics!.sampling.rows, lines.length - 1)
    assert.equal(report.notes.length, 3)
  })

  it('ends with nothing where no more is wanted', async () => {
    const { dialect, wanted } = plan()
    let blocks = 0
    assert.equal(await read({ path: log, dialect, wanted }, () => ++blocks < 3), undefined)
    assert.equal(blocks, 3)
  })

  it('waits for whoever takes the rows, who finds each as it was read, however short the lines', async () => {
    const short = join(folder, 'short.csv')
    // Far more rows in one reading of the file than all drawers hold.
    const rows = 400_000
    writeFileSync(short, Array.from({ length: rows }, (_, at) => `${at % 9}\n`).join(''))
    const dialect = { separator: ',', decimal: '.', quoted: false, columns: [{ name: 'a' }], dataLine: 1, dataOffset: 0 } as const
    let seen = 0
    const end = await read({ path: short, dialect, wanted: [{ column: 0 }] }, ({ rows: count, slots, lines: numbers }) => {
      for (let row = 0; row < count; row++, seen++) if (slots[0]![row] !== seen % 9 || numbers[row] !== seen + 1) return false
      return true
    })
    assert.equal(seen, rows)
    assert.equal(end?.tally.rows, rows)
  })

  it('says what cannot be read', async () => {
    const { dialect, wanted } = plan()
    await assert.rejects(read({ path: join(folder, 'none.csv'), dialect, wanted }, () => true), /none\.csv: there is no such file/)
  })
})
