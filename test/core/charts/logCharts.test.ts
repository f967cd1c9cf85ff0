import assert from 'node:assert/strict'
import { buildCharts, chartOfRow } from '../../../src/core/charts/buildCharts'
import { logTraced } from '../../../src/core/charts/logTrace'
import type { ChartsView } from '../../../src/core/charts/view'
import { logRequestOf, withCloserLook, withLogs } from '../../../src/core/derived/logOf'
import { analyseLog } from '../../../src/core/logs/analyseLog'
import type { LogAtHand, ReadLog } from '../../../src/core/logs/atHand'
import { readDisplayUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const text = `format: 1
machine:
  front: {travel: 120}
  rear: {travel: 130}
  logger: {time: {column: t}, front: {column: fork}, rear: {column: shock}}
entries:
  - id: a
    ride: {log: a.csv}
  - id: b
  - id: c
    ride: {log: c.csv}
  - id: d
    ride: {log: d.csv}
`
const notebook = readNotebook(text)

/** A sine of the fork about 60 mm, `height` high, once a second, 200 samples a second; one sample at `peak` mm. */
function logOf(height: number, { seconds = 60, peak = 60 + height, shock = (at: number) => 52 + 26 * Math.sin(at / 40), window = {} } = {}): ReadLog {
  const rows = Array.from({ length: seconds * 200 }, (_, at) => `${at / 200},${at === 4321 ? peak : (60 + height * Math.sin((2 * Math.PI * at) / 197.3)).toFixed(3)},${shock(at).toFixed(3)}`)
  const analysis = analyseLog({ ...logRequestOf(notebook), window, options: { tracePieces: 512 } })
  analysis.feed(new TextEncoder().encode(`t,fork,shock\n${rows.join('\n')}\n`))
  const { statistics, ...report } = analysis.end()
  return { ...report, statistics: statistics!, state: 'read', stamp: String(height) }
}

const logs = { 'a.csv': logOf(20), 'c.csv': logOf(40, { peak: 119.5 }), 'd.csv': logOf(30) }
const withThem = withLogs(notebook, new Map<string, LogAtHand>(Object.entries(logs)))
const fileUnits = readDisplayUnits(() => undefined)
const chartsOf = (entry: string, between: string[] = [], units = fileUnits) => buildCharts(withThem, 'log', entry, units, between)
const chart = ({ charts }: ChartsView, key: string) => charts.find((each) => each.key === `log_${key}`)!

describe('the charts of logs', () => {
  it('are of the entry looked at and the nearest one before it with a log', () => {
    assert.deepEqual(chart(chartsOf('c'), 'position_front').series.map(({ key }) => key), ['c', 'a'])
    assert.deepEqual(chart(chartsOf('b'), 'position_front').series.map(({ key }) => key), ['a'])
    assert.equal(chartsOf('c').ofEntry, 'c')
  })

  it('are of all entries that are selected together', () => {
    assert.deepEqual(chart(chartsOf('d', ['a', 'd']), 'velocity_rear').series.map(({ key }) => key), ['d', 'a', 'c'])
  })

  it('hold histograms whose shares add up to the whole', () => {
    for (const key of ['position_front', 'position_rear', 'velocity_front', 'velocity_rear']) {
      for (const { y, x } of chart(chartsOf('c'), key).series) {
        assert.ok(Math.abs(y.reduce<number>((sum, share) => sum + share!, 0) - 100) < 0.2, key)
        assert.ok(x.every((place, at) => at === 0 || place > x[at - 1]!))
      }
    }
  })

  it('have velocities in bins alike on both sides of zero', () => {
    const [own] = chart(chartsOf('c'), 'velocity_front').series
    assert.ok(Math.abs(own!.x[0]! + own!.x.at(-1)!) < 1e-9)
    assert.equal(own!.x.length % 2, 0)
  })

  it('follow the arcsine law for a sine', () => {
    // From 55 to 65 mm of 60 ± 40: 2 · asin(5 / 40) / π of the time; the source is the arcsine law.
    const [own] = chart(chartsOf('c'), 'position_front').series
    const share = own!.x.reduce((sum, place, at) => (place > 55 && place < 65 ? sum + own!.y[at]! : sum), 0)
    assert.ok(Math.abs(share - (100 * 2 * Math.asin(5 / 40)) / Math.PI) < 0.1, String(share))
  })

  it('lose no peak over the time, and mark the stops', () => {
    const { series, notes } = chart(chartsOf('c'), 'trace')
    assert.deepEqual(series.map(({ key, form }) => `${key} ${form}`), ['front line', 'front_stops marks', 'rear line'])
    assert.equal(Math.max(...series[0]!.y as number[]), 119.5)
    assert.ok(series[0]!.x.length <= 1024 && series[0]!.x.every((time, at) => at === 0 || time > series[0]!.x[at - 1]!))
    assert.deepEqual([series[1]!.x, series[1]!.y], [[21.61], [119.5]])
    assert.deepEqual(notes, ['front on its stop once: 21.61 s.'])
  })

  it('draw the front over the rear in shares of the time, and the mean of each', () => {
    const { series } = chart(chartsOf('c'), 'front_rear')
    assert.deepEqual(series.map(({ key, form }) => `${key} ${form}`), ['c squares cells', 'c line', 'a line'])
    assert.equal(Math.max(...series[0]!.weight!), 1)
    assert.ok(series[1]!.y.every((front) => front! > 40 && front! < 60))
  })

  it('draw a stretch that is looked at closely in more detail, and say how fine they are', () => {
    const trace = (closer: Parameters<typeof withCloserLook>[2]) => chart(buildCharts(withCloserLook(withThem, 'c.csv', closer), 'log', 'c'), 'trace')
    const { statistics: { front, rear } } = logOf(40, { peak: 119.5, window: { fromS: 20, toS: 22 } })
    const [whole, closer] = [chart(chartsOf('c'), 'trace'), trace({ front: front!.trace!, rear: rear!.trace! })]
    const between = ({ series }: typeof whole, key: string) => { const { x } = series.find((each) => each.key === key)!; return x.filter((place) => place >= 20 && place <= 22).length }
    assert.equal(whole.detail!.step > 0.1 && Math.abs(whole.detail!.finest - 0.005) < 1e-9 && whole.detail!.closer, undefined)
    assert.ok(Math.abs(closer.detail!.closer!.step - 0.005) < 1e-9 && Math.abs(closer.detail!.closer!.from - 20) < 1e-6)
    for (const end of ['front', 'rear']) assert.ok(between(closer, end) > 390 && between(whole, end) < 50, `${end}: ${between(whole, end)} to ${between(closer, end)}`)
    assert.ok(closer.series[0]!.y.includes(119.5))
    assert.deepEqual(trace('reading').notes[0], 'The stretch in sight is being read more closely.')
    assert.equal(withCloserLook(withThem, 'b.csv', 'reading'), withThem)
    assert.deepEqual([logTraced(withThem, 'b'), logTraced(withThem, undefined), logTraced(notebook, 'a')], ['a.csv', 'd.csv', undefined])
  })

  it('say the same in tables, in the units asked for', () => {
    const inches = readDisplayUnits((kind) => (kind === 'length' ? 'in' : undefined))
    const { table, x } = chart(chartsOf('c', [], inches), 'position_front')
    assert.equal(x.unit, 'in')
    assert.deepEqual(table.columns, ['Position from fully extended, in', 'c, % of the time', 'a, % of the time'])
    const bins = chart(chartsOf('c'), 'position_front').table.rows
    assert.deepEqual(bins[0]!.slice(0, 1), ['20 to 25'])
    assert.ok(Math.abs(bins.reduce((sum, row) => sum + Number(row[2]), 0) - 100) < 1)
    const trace = chart(chartsOf('c'), 'trace').table
    assert.deepEqual(trace.columns, ['Time, s', 'front, mm', 'rear, mm'])
    assert.ok(trace.rows.length <= 40 && trace.rows.some((row) => row[1]!.endsWith('119.5')))
  })

  it('say what to do where there is no log, and leave the others out', () => {
    const { charts } = buildCharts(notebook, 'log', 'c')
    assert.deepEqual(charts.map(({ key }) => key), ['log_trace'])
    assert.match(charts[0]!.wanting!.join(' '), /In c it needs a log of this ride\. .*Describe Logger/)
    assert.deepEqual(buildCharts(readNotebook(''), 'log').charts[0]!.wanting![0], 'There is no entry yet.')
  })

  it('are where a row of the log leads to', () => {
    for (const row of ['front_median_mm', 'rear_bottomed', 'front_high_rebound_pct', 'read', 'pitch_deg']) assert.equal(chartOfRow(`computed/log.${row}`), 'log', row)
  })
})
