import assert from 'node:assert/strict'
import { start } from '../../src/cli/run'
import { UsageError, type World } from '../../src/cli/outcome'
import { parse } from 'yaml'
import { makeRide, writeRide } from '../core/logs/generateLog'

const ride = makeRide({ rows: 9000, rateHz: 200, front: { middle: 45, reach: 70, most: 118.5 }, rear: { middle: 40, reach: 60, most: 128 } })
const notebook = `format: 1
machine:
  name: Tern 650
  front: {travel: 120}
  rear: {travel: 130, motion_ratio: 0.45}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
  logger:
    time: {column: Time}
    front: {column: Fork}
    rear: {column: Shock, at: wheel}
    brake: {column: Brake F, on: 2}
    lap: {column: Lap}
`
const logs: Record<string, string> = {
  'run.csv': writeRide(ride, { units: true }), 'other.csv': writeRide(ride).replace('Fork', 'Front speed'),
  'bad.csv': 'Time,Fork\n1,2,3\n', 'cut.csv': writeRide(ride).slice(0, -3),
}
const notebooks: Record<string, string> = { 'tern.setup.yaml': notebook, 'broken.setup.yaml': 'machine: {name: "Tern\n' }

const world: World = {
  find: (paths) => [...paths], create: () => undefined, write: () => undefined, today: () => '2026-04-18',
  read: (path) => {
    if (notebooks[path] === undefined) throw new UsageError(`${path}: there is no such file or folder`)
    return notebooks[path]
  },
  async *stream(path) {
    const text = logs[path]
    if (text === undefined) throw new UsageError(`${path}: there is no such file or folder`)
    for (let at = 0; at < text.length; at += 50_000) yield new Uint8Array(Buffer.from(text.slice(at, at + 50_000)))
  },
}

const log = (...args: string[]) => start(['log', ...args], world)

describe('detent log', () => {
  it('tells the figures of both ends beside each other, with how they came about', async () => {
    const { out, code } = await log('run.csv', '--notebook', 'tern.setup.yaml')
    assert.equal(code, 0)
    assert.match(out, /^run\.csv · Tern 650\n5 columns separated by comma, decimal point, headings in line 1, units in line 2/)
    assert.match(out, /9000 rows, 200 samples a second/)
    assert.match(out, /Savitzky-Golay over 5 samples \(25 ms\), order 2/)
    assert.match(out, /^ +Front ‘Fork’ +Rear ‘Shock’$/m)
    assert.match(out, /^Dynamic sag, median +[\d.]+ mm \([\d.]+ %\) +[\d.]+ mm \([\d.]+ %\)$/m)
    assert.match(out, /^bottomed: within 2 mm of the travel's end/m)
    assert.match(out, /^Braking +2 times/m)
    assert.match(out, /^Rake, 5 – 50 – 95 % +[\d.]+ – [\d.]+ – [\d.]+°$/m)
    assert.equal(out.match(/^[123] +[\d.]+ +[\d.]+/gm)!.length, 3)
    assert.doesNotMatch(out, /NaN|undefined|Left out/)
  })

  it('proposes a mapping without a notebook, as lines that a notebook takes', async () => {
    const { out } = await log('run.csv')
    const lines = out.split('\n')
    const from = lines.findIndex((line) => line.trim() === 'logger:')
    const block = lines.slice(from, lines.findIndex((line, at) => at > from && !line.startsWith('    '))).map((line) => line.slice(2)).join('\n')
    assert.deepEqual(parse(block), { logger: { time: { column: 'Time', unit: 's' }, front: { column: 'Fork', unit: 'mm' }, rear: { column: 'Shock', unit: 'mm' }, brake: { column: 'Brake F' }, lap: { column: 'Lap' } } })
    assert.match(out, /not sure: rear: it may be the shock’s own travel/)
  })

  it('gives JSON with units in its names, and a line a number as CSV, the same numbers', async () => {
    const { out } = await log('run.csv', '--notebook', 'tern.setup.yaml', '--format', 'json')
    const found = JSON.parse(out)
    assert.deepEqual([found.version, found.machine, found.mapping_is, found.sampling.rate_hz, found.front.travel_mm, found.laps.length], [1, 'Tern 650', 'given', 200, 120, 3])
    assert.equal(typeof found.front.position.percentiles_mm.p95, 'number')
    assert.deepEqual(Object.keys(found.front.velocity.shares_pct), ['high_rebound', 'low_rebound', 'still', 'low_compression', 'high_compression'])
    const csv = (await log('run.csv', '--notebook', 'tern.setup.yaml', '--format', 'csv')).out.split('\n')
    assert.equal(csv[0], 'name,value')
    assert.ok(csv.includes(`front.position.median_mm,${found.front.position.median_mm}`))
    assert.ok(csv.length < 800 && csv.every((line) => /^$|^[\w.]+,/.test(line)))
  })

  it('looks at a window or a lap', async () => {
    const lap = JSON.parse((await log('run.csv', '--notebook', 'tern.setup.yaml', '--lap', '2', '--format', 'json')).out)
    assert.deepEqual([lap.window, lap.front.position.samples], [{ lap: 2 }, 4000])
    const window = JSON.parse((await log('run.csv', '--from', '10', '--to', '20.5', '--format', 'json')).out)
    assert.deepEqual([window.window, window.sampling.from_s, window.sampling.to_s], [{ from_s: 10, to_s: 20.5 }, 10, 20.5])
  })

  it('tells what was left out', async () => {
    assert.match((await log('cut.csv', '--notebook', 'tern.setup.yaml')).out, /Left out or mended:\n {2}the last line has no line end/)
  })

  it('ends with exit code 2 and a sentence for everything a person can get wrong', async () => {
    for (const [args, words] of [
      [[], /name one log/], [['a', 'b'], /name one log/], [['none.csv'], /^detent log: none\.csv: there is no such file/], [['run.csv', '--format', 'xml'], /--format/],
      [['run.csv', '--lap', 'x'], /--lap takes a number/], [['run.csv', '--lap', '1', '--from', '2'], /exclude one another/], [['run.csv', '--from', '5', '--to', '5'], /must come before/],
      [['run.csv', '--lap', '9'], /run\.csv: no row is of lap 9/], [['run.csv', '--colour'], /--colour/], [['run.csv', '--notebook', 'broken.setup.yaml'], /broken\.setup\.yaml:\d+:\d+: /],
      [['other.csv', '--notebook', 'tern.setup.yaml'], /other\.csv: front: there is no column ‘Fork’/], [['bad.csv'], /bad\.csv: /],
    ] as const) {
      const { err, code, out } = await log(...args)
      assert.deepEqual([code, out], [2, ''], args.join(' '))
      assert.match(err ?? '', words)
    }
  })

  it('is among the commands, explains itself, and leaves the others to run at once', async () => {
    assert.match((await start(['--help'], world)).out, /^detent log CSV/m)
    assert.match((await log('--help')).out, /machine\.logger/)
    assert.equal((await start(['check', 'tern.setup.yaml'], world)).code, 0)
    assert.match((await start(['lgo'], world)).err ?? '', /, log, /m)
  })
})
