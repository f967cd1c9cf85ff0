import assert from 'node:assert/strict'
import fc from 'fast-check'
import { mean, quantileSeq } from 'mathjs'
import { analyseLog, type LogReport, type LogRequest } from '../../../src/core/logs/analyseLog'
import { told } from '../../../src/core/logs/problem'
import { near } from '../compute/near'
import { makeRide, writeRide, type MadeRow } from './generateLog'
import { bytes } from './reading/readAll'

const ride = makeRide({ rows: 12_000, rateHz: 200, front: { middle: 45, reach: 70, most: 118.5 }, rear: { middle: 40, reach: 60, most: 128 } })
const facts = { front: { travelMm: 120 }, rear: { travelMm: 130 } }
const mapping = { time: { column: 'Time' }, front: { column: 'Fork' }, rear: { column: 'Shock' }, brake: { column: 'Brake F', on: 2 }, lap: { column: 'Lap' } } as const

function report(log: string | Uint8Array, request: LogRequest = { mapping, facts }, chunk = 1 << 16): LogReport {
  const whole = typeof log === 'string' ? bytes(log) : log
  const analysis = analyseLog(request)
  for (let at = 0; at < whole.length; at += chunk) if (!analysis.feed(whole.slice(at, at + chunk))) break
  return analysis.end()
}

function statisticsOf(log: string, request?: LogRequest) {
  const { statistics, problem } = report(log, request)
  assert.ok(statistics, problem ? told(problem) : '')
  return statistics
}

const problemOf = (log: string | Uint8Array, request?: LogRequest) => {
  const { problem, statistics } = report(log, request)
  assert.ok(problem && !statistics)
  return told(problem)
}

/** Where two reports differ by more than rounding: the first few places. */
function different(a: unknown, b: unknown, path = ''): string[] {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b)) ? [] : [`${path}: ${a}, ${b}`]
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b ? [] : [`${path}: ${String(a)}, ${String(b)}`]
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])]
  return keys.flatMap((key) => different((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], `${path}.${key}`)).slice(0, 5)
}

const written = writeRide(ride)
const whole = statisticsOf(written)
const fork = ride.map(({ front }) => Number(front.toFixed(2)))

describe('analyseLog', () => {
  it('mathjs: percentiles, median, mean and deepest of the positions as they are written', () => {
    const { position } = whole.front!
    assert.deepEqual([position.exact, position.resolutionMm, position.samples], [true, 0.01, ride.length])
    for (const percent of [1, 5, 10, 25, 50, 75, 90, 95, 99]) near(position.percentilesMm[`p${percent}`], Number(quantileSeq(fork, percent / 100)), 1e-9, `${percent} %`)
    near(position.meanMm, mean(fork), 1e-9)
    near(position.medianMm, Number(quantileSeq(fork, 0.5)), 1e-9)
    assert.equal(position.deepestMm, Math.max(...fork))
    near(position.medianPct!, (100 * position.medianMm) / 120, 1e-9)
    near(position.histogramPct!.sharesPct.reduce((sum, share) => sum + share, 0), 100, 1e-9)
  })

  it('tells how it was sampled and how velocity was fitted', () => {
    const { rows, rateHz, velocityFit, averagedBy, interpolated, gaps } = whole.sampling
    near(rateHz, 200, 1e-9)
    near(velocityFit.spanS, 0.025, 1e-9)
    assert.deepEqual([rows, velocityFit.points, velocityFit.order, averagedBy, interpolated, gaps], [12_000, 5, 2, 2, 0, 0])
  })

  it('has a velocity for every sample, and finds the stops, braking and laps that are in the ride', () => {
    assert.equal(whole.front!.velocity!.samples, ride.length)
    const onStop = fork.map((mm) => mm >= 118)
    assert.ok(onStop.includes(true))
    assert.ok(whole.front!.bottoming!.times >= 1)
    assert.equal(onStop[Math.round(whole.front!.bottoming!.places[0]!.atS * 200)], true)
    assert.deepEqual([whole.braking!.from, whole.braking!.count], ['brake', 3])
    near(whole.braking!.events[0]!.forS, 2.5, 0.02)
    assert.deepEqual(whole.laps!.map(({ lap }) => lap), [1, 2, 3])
    near(whole.laps![1]!.fromS, 20, 1e-9)
    const second = ride.flatMap(({ lap }, at) => (lap === 2 ? [fork[at]!] : []))
    near(whole.laps![1]!.ends.front!.medianMm, Number(quantileSeq(second, 0.5)), 1e-9)
    assert.equal(whole.laps!.reduce((sum, { ends }) => sum + ends.front!.bottomed!, 0), whole.front!.bottoming!.times)
  })

  it('guesses braking from both ends where there is no brake, and says so', () => {
    const { time, front, rear } = mapping
    const { braking } = statisticsOf(written, { mapping: { time, front, rear }, facts })
    assert.equal(braking!.from, 'ends')
    assert.ok(braking!.count >= 3)
  })

  it('says the same of the same ride, however it is written and cut into chunks', () => {
    const clock = ({ time }: MadeRow) => `14:${String(3 + Math.floor(time / 60)).padStart(2, '0')}:${(time % 60).toFixed(3).padStart(6, '0')}`
    const ways: [Parameters<typeof writeRide>[1], LogRequest['mapping']][] = [
      [{ separator: ';', decimal: ',' }, mapping], [{ separator: '\t' }, mapping], [{ separator: '\t', decimal: ',', lineEnd: '\r\n' }, mapping],
      [{ quote: '"' }, mapping], [{ quote: '"', decimal: ',' }, mapping], [{ lineEnd: '\r\n', units: true }, mapping],
      [{ before: ['Logger export', '', 'Venue;Fen Airfield', '# by hand'], separator: ';' }, mapping],
      [{ time: ({ time }) => String(Math.round(time * 1000)) }, { ...mapping, time: { column: 'Time', unit: 'ms' } }],
      [{ time: clock }, { ...mapping, time: { column: 'Time', unit: 'clock' } }],
      [{ time: (row) => `2026-04-18T${clock(row)}Z` }, { ...mapping, time: { column: 'Time', unit: 'clock' } }],
    ]
    for (const [way, by] of ways) assert.deepEqual(different(statisticsOf(writeRide(ride, way), { mapping: by!, facts }), whole), [], JSON.stringify(way))
    for (const chunk of [777, 65_536, 1 << 20]) assert.deepEqual(different(report(written, { mapping, facts }, chunk).statistics, whole), [])
  })

  it('makes nothing of other ways to measure the same: volts, extension, %, the damper', () => {
    const volts = writeRide(ride.map((row) => ({ ...row, front: 4.5 * 25 - row.front, rear: row.rear / 2 })), {})
    const found = statisticsOf(volts, {
      mapping: { ...mapping, front: { column: 'Fork', unit: 'counts', scale: 1, offset: 112.5, direction: 'extension' }, rear: { column: 'Shock', at: 'damper' } },
      facts: { ...facts, rear: { travelMm: 130, leverage: { motionRatio: 0.5 } } },
    })
    near(found.front!.position.medianMm, whole.front!.position.medianMm, 0.011)
    near(found.rear!.position.medianMm, whole.rear!.position.medianMm, 0.021)
    near(found.front!.velocity!.sharesPct.highCompression, whole.front!.velocity!.sharesPct.highCompression, 0.5)
  })

  it('works with one end, without travels, and with a rate in place of a time', () => {
    const found = statisticsOf(written, { mapping: { rateHz: 200, front: { column: 'Fork' } } })
    assert.deepEqual([found.rear, found.front!.bottoming, found.front!.position.medianPct, found.frontRear, found.braking], [undefined, undefined, undefined, undefined, undefined])
    near(found.front!.position.medianMm, whole.front!.position.medianMm, 1e-9)
    near(found.sampling.toS, (ride.length - 1) / 200, 1e-9)
  })

  it('looks at a window of time or at a lap alone', () => {
    const window = statisticsOf(written, { mapping, facts, window: { fromS: 20, toS: 30 } })
    near(window.front!.position.medianMm, Number(quantileSeq(fork.slice(4000, 6001), 0.5)), 1e-9)
    const lap = statisticsOf(written, { mapping, facts, window: { lap: 2 } })
    near(lap.front!.position.medianMm, whole.laps![1]!.ends.front!.medianMm, 1e-9)
    assert.deepEqual([lap.window, lap.front!.position.samples], [{ lap: 2 }, 4000])
    assert.match(problemOf(written, { mapping, facts, window: { fromS: 900 } }), /no row lies in this window/)
    assert.match(problemOf(written, { mapping, facts, window: { lap: 9 } }), /no row is of lap 9/)
  })

  it('proposes a mapping where none is given, and says what it is not sure of', () => {
    const { proposed, statistics } = report(written, { facts })
    assert.deepEqual([proposed!.mapping.front!.column, proposed!.mapping.lap!.column], ['Fork', 'Lap'])
    assert.ok(proposed!.unsure.length > 0 && statistics!.front)
  })
})

/** The paths of numbers that are none. */
function notFinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  return typeof value === 'object' && value !== null ? Object.entries(value).flatMap(([key, each]) => notFinite(each, `${path}.${key}`)).slice(0, 5) : []
}

describe('analyseLog on logs that are not as they should be', () => {
  const lines = written.split('\n').slice(0, -1)
  const withLine = (at: number, change: (line: string) => string) => [...lines.slice(0, at - 1), change(lines[at - 1]!), ...lines.slice(at), ''].join('\n')
  const notesOf = (log: string) => report(log).notes.join('\n')

  it('counts each thing that was left out or mended, with its first line', () => {
    assert.equal(notesOf(written), '')
    assert.match(notesOf(withLine(500, () => '2.49,1,2')), /^1 line with another number of fields left out \(line 500\)/m)
    assert.match(notesOf(withLine(500, (line) => line.replace(/,[^,]*/, ',NaN'))), /^Fork: 1 missing sample left out \(line 500\)/m)
    assert.match(notesOf(withLine(500, (line) => line.replace(/,[^,]*/, ',Infinity'))), /^Fork: 1 infinite value left out \(line 500\)/m)
    assert.match(notesOf(withLine(500, (line) => line.replace(/,[^,]*/, ',bad'))), /^Fork: 1 field that is no number left out \(line 500\)/m)
    assert.match(notesOf(written.slice(0, -6)), /^the last line has no line end/m)
    assert.match(notesOf([...lines.slice(0, 500), ...lines.slice(700), ''].join('\n')), /^1 gap in time, 1\.0\d s; nothing is drawn across/m)
    assert.match(notesOf([...lines.slice(0, 500), ...lines.slice(501), ''].join('\n')), /^1 sample drawn straight/m)
    assert.match(notesOf(withLine(500, () => lines[498]!)), /^1 row with the time of the row before left out/m)
    assert.match(notesOf([...lines, ...lines.slice(1, 500), ''].join('\n')), /^time runs backwards once; each part/m)
  })

  it('says nothing wrong for it: what is left out changes no percentile by more than its share', () => {
    const { statistics } = report(withLine(500, (line) => line.replace(/,[^,]*/, ',NaN')))
    near(statistics!.front!.position.medianMm, whole.front!.position.medianMm, 0.02)
    assert.equal(statistics!.front!.position.samples, ride.length - 1)
    const glitch = report(withLine(500, (line) => line.replace(/,[^,]*/, ',65535'))).statistics!
    assert.match(notesOf(withLine(500, (line) => line.replace(/,[^,]*/, ',65535'))), /^Fork: 1 reading further away than any suspension goes left out \(line 500\)/m)
    assert.deepEqual([glitch.front!.position.deepestMm, glitch.front!.bottoming!.times], [whole.front!.position.deepestMm, whole.front!.bottoming!.times])
    near(glitch.front!.position.medianMm, whole.front!.position.medianMm, 0.02)
  })

  it('refuses a window of time where time runs backwards, with the line', () => {
    assert.match(problemOf([...lines, ...lines.slice(1, 500), ''].join('\n'), { mapping, facts, window: { fromS: 1 } }), new RegExp(`^line ${lines.length + 1}: time runs backwards`))
  })

  it('ends with a sentence for what is no log at all', () => {
    assert.match(problemOf(''), /empty/)
    assert.match(problemOf(Uint8Array.from({ length: 5000 }, (_, at) => (at * 7919) % 256)), /binary/)
    assert.match(problemOf('1,'.repeat(1_000_000)), /64 kB/)
    assert.match(problemOf(`${Array.from({ length: 300 }, (_, at) => `a${at}`).join(',')}\n${'1,'.repeat(2_000_000)}\n`), /64 kB|no table/)
    assert.match(problemOf(`x\n${'12.5\n'.repeat(100)}`), /only one column/)
    assert.match(problemOf(`Time,Fork\n${'1,50\n'.repeat(100)}`, { facts }), /time does not move on/)
    assert.match(problemOf(written, { mapping: { ...mapping, front: { column: 'Fork', unit: 'V' } }, facts }), /need a scale/)
  })

  it('refuses a log whose decimal marks are mixed line by line, and counts a single one', () => {
    const mixed = ['t;x', ...Array.from({ length: 400 }, (_, at) => `${at}.5;1.5`), '400.5;1,5', ''].join('\n')
    assert.match(report(mixed, { mapping: { time: { column: 't' }, front: { column: 'x' } } }).notes.join(), /x: 1 number with the other decimal mark left out \(line 402\)/)
    const half = ['t,x', ...Array.from({ length: 100 }, (_, at) => `${at}.5,1.5`), ...Array.from({ length: 100 }, (_, at) => `${at + 100},5,1,5`), ''].join('\n')
    assert.match(problemOf(half, { mapping: { time: { column: 1 }, front: { column: 2 } } }), /\bline\b|columns|headings/)
  })

  it('never throws and never gives NaN or infinity, whatever the bytes', () => {
    const cell = fc.oneof(fc.double().map(String), fc.constantFrom('', 'NaN', '1e308', '-1e308', '0', '12,5', '"', '"a"', 'Inf', '1:2:3.4'), fc.integer({ min: 0, max: 200 }).map(String))
    const log = fc.array(fc.tuple(cell, cell, cell), { maxLength: 60 }).map((rows) => ['Time,Fork,Shock', ...rows.map((row) => row.join(',')), ''].join('\n'))
    fc.assert(fc.property(fc.oneof(log.map(bytes), fc.uint8Array({ maxLength: 200 })), fc.integer({ min: 1, max: 100 }), (data, chunk) => {
      const { statistics, notes } = report(data, { facts: { front: { travelMm: 120 } } }, chunk)
      assert.deepEqual(notFinite({ statistics, notes }), [])
    }), { numRuns: 150 })
  })

  it('takes no more memory for a longer log: the same arrays serve every block', () => {
    const analysis = analyseLog({ mapping: { time: { column: 'Time' }, front: { column: 'Fork' } }, facts })
    analysis.feed(bytes('Time,Fork,Shock\n'))
    const before = process.memoryUsage().arrayBuffers
    for (let block = 0; block < 60; block++) analysis.feed(bytes(Array.from({ length: 5000 }, (_, at) => `${((block * 5000 + at) / 1000).toFixed(3)},${(at % 100) + 0.25},1\n`).join('')))
    const { statistics } = analysis.end()
    assert.equal(statistics!.sampling.rows, 300_000)
    assert.ok(process.memoryUsage().arrayBuffers - before < 60e6)
  })
})
