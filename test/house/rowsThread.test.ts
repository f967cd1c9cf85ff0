import assert from 'node:assert/strict'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { buildSync } from 'esbuild'
import { analyseLog, planLog, type LogPlan, type LogReport, type LogRequest } from '../../src/core/logs/analyseLog'
import { rowsFrom, type RowsThread } from '../../src/cli/rowsThread'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const script = join(folder, 'cli.cjs')
const log = join(folder, 'log.csv')
const request: LogRequest = { mapping: { time: { column: 1 }, front: { column: 2 }, rear: { column: 3 } }, facts: { front: { travelMm: 120 }, rear: { travelMm: 130 } } }

const row = (at: number) => `${(at / 1000).toFixed(3)},${(60 + 40 * Math.sin(at / 90)).toFixed(2)},${(50 + (at % 60)).toFixed(1)}\n`
// Long enough for many drawers.
const lines = Array.from({ length: 200_000 }, (_, at) => row(at))
/** The same with all that can be the matter: a hole, a line too wide, a broken sensor, gaps, time that stands still, one that runs back, a cut end. */
const hostile = [
  ...lines.slice(0, 5000), '5.000,,50.0\n', ...lines.slice(5001, 70_000), '70.000,60.00,50.0,1\n', '70.001,65535,50.0\n', ...lines.slice(70_002, 90_000), ...lines.slice(90_007, 120_000),
  '# a remark\n', '119.999,61.00,50.0\n', ...lines.slice(120_000, 150_001), 'x,60.00,nan\n', ...lines.slice(150_003, 160_000), ...lines.slice(155_000, 200_000), '200.0',
]

/** Reads on a thread that has ended when it is told. */
async function read(...args: Parameters<RowsThread['read']>) {
  const thread = rowsFrom(new Worker(script, { workerData: { rows: true } }))
  try {
    return await thread.read(...args)
  } finally {
    await thread.stop()
  }
}

const planOf = (path: string, asked = request) => planLog(readFileSync(path).subarray(0, 65_536), false, asked) as LogPlan

async function onThread(path: string, asked = request): Promise<LogReport> {
  const { task, sink, end } = planOf(path, asked)
  return end(await read(path, task, sink))
}

/** On one thread, in chunks of a size. */
function here(path: string, asked = request, chunk = 1 << 19): LogReport {
  const [analysis, bytes] = [analyseLog(asked), readFileSync(path)]
  for (let at = 0; at < bytes.length; at += chunk) if (!analysis.feed(bytes.subarray(at, at + chunk))) break
  return analysis.end()
}

describe('rowsFrom', function () {
  this.timeout(20_000)

  before(() => {
    buildSync({ entryPoints: ['src/cli/main.ts'], outfile: script, bundle: true, platform: 'node', format: 'cjs', target: 'es2022', logLevel: 'error' })
    writeFileSync(log, lines.join(''))
  })
  after(() => rmSync(folder, { recursive: true }))

  it('leads to the same report as one thread does', async () => {
    const report = await onThread(log)
    assert.deepEqual(report, here(log))
    assert.equal(report.statistics!.sampling.rows, lines.length)
  })

  it('leads to the same report of a log with all that can be the matter', async () => {
    const path = join(folder, 'hostile.csv')
    writeFileSync(path, hostile.join(''))
    const report = await onThread(path)
    assert.deepEqual(report, here(path))
    assert.ok(report.notes.length >= 8, report.notes.join('\n'))
  })

  it('leads to the same report of a window, of a lap, with a leverage on the way to the wheel, and without a time', async () => {
    const path = join(folder, 'laps.csv')
    writeFileSync(path, lines.map((line, at) => `${line.trimEnd()},${at % 5000 < 900 ? 1 : 0},${1 + Math.floor(at / 50_000)}\n`).join(''))
    const more: LogRequest = { mapping: { ...request.mapping, brake: { column: 4 }, lap: { column: 5 } }, facts: { front: { travelMm: 120 }, rear: { travelMm: 260, leverage: { table: [[0, 0], [130, 50], [260, 110]] } } } }
    const driven: LogRequest = { ...more, mapping: { ...more.mapping, rear: { column: 3, at: 'damper' } } }
    const untimed: LogRequest = { ...request, mapping: { rateHz: 500, front: { column: 2 }, rear: { column: 3 } } }
    for (const asked of [more, { ...more, window: { lap: 3 } }, { ...request, window: { fromS: 20, toS: 90 } }, driven, untimed, { ...request, window: { fromS: 900 } }]) {
      const report = await onThread(path, asked)
      assert.deepEqual(report, here(path, asked))
      // However the bytes came.
      assert.deepEqual(report, here(path, asked, 99_991))
      assert.ok(report.statistics ?? report.problem)
    }
  })

  it('ends where no more is wanted', async () => {
    const { task, sink } = planOf(log, { ...request, window: { toS: 10 } })
    const { tally } = await read(log, task, sink)
    assert.ok(tally.rows > 10_000 && tally.rows <= 10_000 + 2048)
  })

  it('waits for whoever takes the rows, who finds each as it was read, however short the lines', async () => {
    const short = join(folder, 'short.csv')
    // Far more rows in one reading of the file than all drawers hold.
    const rows = 400_000
    writeFileSync(short, Array.from({ length: rows }, (_, at) => `${at % 9}\n`).join(''))
    const dialect = { separator: ',', decimal: '.', quoted: false, columns: [{ name: 'a' }], dataLine: 1, dataOffset: 0 } as const
    const { task } = planOf(log)
    let seen = 0
    const end = await read(short, { ...task, dialect, resolved: { rateHz: 1000, ends: { front: { column: 0, name: 'a', factor: 1, shift: 0 } } } }, {
      begin: ({ spacing }) => assert.equal(spacing.s, 0.001),
      take(times, [values], count) {
        for (let at = 0; at < count; at++, seen++) assert.deepEqual([times[at], values![at]], [seen / 1000, seen % 9])
      },
    })
    assert.equal(seen, rows)
    assert.equal(end.tally.rows, rows)
  })

  it('says what cannot be read, and why the rows are of no use', async () => {
    const { task, sink } = planOf(log)
    await assert.rejects(read(join(folder, 'none.csv'), task, sink), /none\.csv: there is no such file/)
    const still = join(folder, 'still.csv')
    writeFileSync(still, lines.map((line) => line.replace(/^[^,]*/, '1.000')).join(''))
    const plan = planOf(still)
    assert.match(plan.end(await read(still, plan.task, plan.sink)).problem!.message, /time does not move on/)
  })
})
