import assert from 'node:assert/strict'
import { spawnSync } from 'node:child_process'
import { createReadStream, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { start } from '../../src/cli/run'
import { disk } from '../../src/cli/disk'
import { sampleLog, sampleLogPath } from './docs/sampleLog'

const notebook = 'samples/tern-650.setup.yaml'
const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const python = ['python3', 'python'].find((name) => spawnSync(name, ['--version'], { encoding: 'utf8' }).stdout?.startsWith('Python 3'))

/** The table a script prints, a list of cells a row. */
function table(out: string): string[][] {
  return out.trimEnd().split('\n').map((line) => line.split(/ {2,}/))
}

function checkTable(out: string): void {
  const [head, ...rows] = table(out)
  assert.deepEqual(head, ['end', 'clicks out', 'entry', 'date', 'tie mm', 'log mm', 'median mm'])
  const of = (end: string, entry: string) => rows.find((row) => row[0] === end && row[2] === entry)
  // In June the fork's rebound stood at 2, the tie at 109 mm, and the log's deepest place was 108.7 mm.
  assert.deepEqual(of('front', 'fa-3')!.slice(0, 6), ['front', '2', 'fa-3', '2026-06-13', '109.0', '108.7'])
  assert.deepEqual(of('rear', 'sm-2')!.slice(0, 5), ['rear', '9', 'sm-2', '2026-04-18', '109.0'])
  assert.equal(rows.length, 23)
  const clicks = rows.filter(([end]) => end === 'rear').map((row) => Number(row[1]))
  assert.deepEqual(clicks, [...clicks].sort((a, b) => a - b))
}

describe('the samples’ log', () => {
  it('is the one that is made, to the byte, and small (npm run docs writes it anew)', () => {
    assert.ok(readFileSync(sampleLogPath, 'utf8') === sampleLog())
    assert.ok(statSync(sampleLogPath).size < 200_000)
  })

  it('is read with nothing left out, and says what the tie said', async () => {
    const { out, code } = await start(['log', sampleLogPath, '--notebook', notebook, '--format', 'json'], disk)
    assert.equal(code, 0)
    const { notes, front, rear, braking, laps } = JSON.parse(out)
    assert.deepEqual(notes, [])
    assert.ok(Math.abs(front.position.deepest_mm - 109) < 1)
    assert.ok(rear.position.deepest_mm > 100 && rear.position.deepest_mm < 130)
    assert.deepEqual([braking.count, laps.length], [3, 4])
  })
})

describe('the samples’ scripts', () => {
  after(() => rmSync(folder, { recursive: true }))

  it('the one in TypeScript tabulates travel against rebound clicks, with the core as a library', () => {
    const { stdout, stderr, status } = spawnSync(process.execPath, ['--import', 'tsx', 'samples/scripts/reboundAndTravel.ts', notebook], { encoding: 'utf8' })
    assert.equal(status, 0, stderr)
    checkTable(stdout)
  })

  it('the one in Python does the same from what the command line prints, where there is a Python', async function () {
    if (!python) {
      console.log('      skipped: there is no Python 3 on this machine')
      this.skip()
    }
    const exported = await start(['export', notebook], disk)
    const log = await start(['log', sampleLogPath, '--notebook', notebook, '--format', 'json'], disk)
    writeFileSync(join(folder, 'tern.json'), exported.out)
    writeFileSync(join(folder, 'fa-3.json'), log.out)
    const { stdout, stderr, status } = spawnSync(python, ['samples/scripts/rebound_and_travel.py', join(folder, 'tern.json'), join(folder, 'fa-3.json')], { encoding: 'utf8', env: { ...process.env, PYTHONIOENCODING: 'utf-8' } })
    assert.equal(status, 0, stderr)
    checkTable(stdout)
  })
})

describe('the library', () => {
  it('reads a log that comes in any pieces', async () => {
    const { analyseLog } = await import('../../src/core/index')
    const analysis = analyseLog()
    for await (const chunk of createReadStream(sampleLogPath, { highWaterMark: 1000 })) analysis.feed(chunk as Buffer)
    assert.ok(analysis.end().statistics!.front)
  })
})
