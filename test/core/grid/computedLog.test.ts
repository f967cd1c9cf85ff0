import assert from 'node:assert/strict'
import { logPathsOf, logRequestOf, withLogs } from '../../../src/core/derived/logOf'
import { cardFor } from '../../../src/core/card/cardFor'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { analyseLog } from '../../../src/core/logs/analyseLog'
import type { LogAtHand } from '../../../src/core/logs/atHand'
import { readDisplayUnits } from '../../../src/core/notation/displayUnits'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const text = `format: 1
machine:
  front: {travel: 120}
  rear: {travel: 130}
  logger:
    time: {column: t, unit: s}
    front: {column: fork}
    rear: {column: shock}
adjusters:
  fork_height: {on: fork, controls: fork_height, counts: mm}
entries:
  - id: one
    ride: {front_travel_used: 104, log: logs/one.csv}
  - id: two
    ride: {log: logs/two.csv}
  - id: three
`

/** 20 s at 100 a second: the fork goes from 30 to 90 mm and back once a second, and lies on its stop once; the shock stands still. */
const rows = Array.from({ length: 2000 }, (_, at) => `${at / 100},${at === 1000 ? 119 : (60 - 30 * Math.cos((2 * Math.PI * at) / 100)).toFixed(2)},40`)
const csv = `t,fork,shock\n${rows.join('\n')}\n`

function read(notebook: Notebook, content: string): LogAtHand {
  const analysis = analyseLog(logRequestOf(notebook))
  analysis.feed(new TextEncoder().encode(content))
  const report = analysis.end()
  return { ...report, statistics: report.statistics!, state: 'read', stamp: 'a' }
}

function gridOf(logs: Record<string, LogAtHand> | undefined, units = readDisplayUnits(() => undefined)) {
  const notebook = withLogs(readNotebook(text), logs && new Map(Object.entries(logs)))
  const view = buildGrid(notebook, [], units)
  const cell = (row: string, column: string) => view.cells[view.rows.findIndex(({ key }) => key === `computed/log.${row}`)]?.[view.columns.findIndex(({ key }) => key === column)]
  return { notebook, view, cell, rows: view.rows.map(({ key }) => key) }
}

const one = read(readNotebook(text), csv)

describe('the rows of a log', () => {
  it('are not there where nobody looks for logs', () => {
    assert.deepEqual(gridOf(undefined).rows.filter((key) => key.includes('log.')), [])
  })

  it('tell each entry with a log what became of it', () => {
    const { cell } = gridOf({ 'logs/one.csv': one, 'logs/two.csv': { state: 'unread', stamp: 'b', why: 'there is no file logs/two.csv beside this notebook', absent: true } })
    assert.equal(cell('read', 'one')?.text, '20 s')
    assert.equal(cell('read', 'one')?.about, '2000 rows, 100 samples a second')
    assert.equal(cell('read', 'two')?.text, 'there is no file logs/two.csv beside this notebook')
    assert.deepEqual(cell('read', 'three'), { state: 'computed', text: '', about: 'needs a log of this ride' })
    assert.equal(cell('front_median_mm', 'two')?.about, 'needs a log that can be read: there is no file logs/two.csv beside this notebook')
  })

  it('say that a log is being read as long as it is', () => {
    const { cell } = gridOf({ 'logs/one.csv': one, 'logs/two.csv': { state: 'reading', stamp: 'reading' } })
    assert.equal(cell('read', 'two')?.text, 'being read…')
    assert.equal(cell('rear_mean_mm', 'two')?.about, 'needs the log, which is being read')
  })

  it('hold the figures of both ends', () => {
    const { cell } = gridOf({ 'logs/one.csv': one })
    const told = (...names: string[]) => names.map((name) => cell(name, 'one')?.text)
    // A sine about 60 mm: median and mean are its middle, and it is faster than 150 mm/s for acos(150 / 188.5) · 2 / π of the time, 41 %.
    assert.deepEqual(told('front_median_mm', 'front_mean_mm', 'front_deepest_mm', 'front_deepest_pct', 'front_bottomed', 'front_topped'), ['60', '60', '119', '99', '1', '0'])
    const [high, low, lowRebound, highRebound] = told('front_high_compression_pct', 'front_low_compression_pct', 'front_low_rebound_pct', 'front_high_rebound_pct').map(Number)
    assert.ok(Math.abs(high! - 21) <= 1 && Math.abs(highRebound! - 21) <= 1, `${high} ${highRebound}`)
    assert.ok(Math.abs(high! + low! + lowRebound! + highRebound! - 100) <= 2)
    assert.deepEqual(told('rear_median_mm', 'rear_deepest_pct'), ['40', '31'])
  })

  it('set travel used by the log beside the tie, in the units asked for', () => {
    assert.equal(gridOf({ 'logs/one.csv': one }).cell('front_used', 'one')?.text, '119 / 104 mm')
    assert.equal(gridOf({ 'logs/one.csv': one }).cell('rear_used', 'one')?.text, '40 mm, no tie')
    const inches = readDisplayUnits((kind) => (kind === 'length' ? 'in' : undefined))
    assert.equal(gridOf({ 'logs/one.csv': one }, inches).cell('front_used', 'one')?.text, '4.7 / 4.1 in')
  })

  it('are made anew where another log is at hand, though the entry says the same', () => {
    const notebook = readNotebook(text)
    const cellsOf = (logs: Record<string, LogAtHand>) => {
      const view = buildGrid(withLogs(notebook, new Map(Object.entries(logs))), [])
      return view.cells[view.rows.findIndex(({ key }) => key === 'computed/log.read')]![0]!.text
    }
    assert.equal(cellsOf({ 'logs/one.csv': { state: 'reading', stamp: 'reading' } }), 'being read…')
    assert.equal(cellsOf({ 'logs/one.csv': one }), '20 s')
  })

  it('tell rates, steps and filters on their cards', () => {
    const { notebook } = gridOf({ 'logs/one.csv': one })
    const lines = (row: string) => cardFor(notebook, `computed/log.${row}`, 'one')!.sections.flatMap((section) => section.lines)
    assert.ok(lines('front_low_rebound_pct').includes('velocity by Savitzky-Golay over 5 samples (50 ms), order 2'))
    assert.ok(lines('front_low_rebound_pct').includes('high speed from 150 mm/s in compression and 150 mm/s in rebound'))
    assert.ok(lines('front_median_mm').includes('2000 rows, 100 samples a second, from 0 to 19.99 s'))
    assert.ok(lines('front_median_mm').includes('the log logs/one.csv'))
  })
})

describe('logPathsOf', () => {
  it('names every log once and none that leads elsewhere', () => {
    const log = (path: string) => `  - ride: {log: ${JSON.stringify(path)}}\n`
    const entries = ['a.csv', '../a.csv', './a.csv', '/etc/passwd', 'c:\\a.csv', 'https://example.org/a.csv', '~/a.csv', 'sub/b.csv', 'a/../../b.csv', '\\\\host\\a.csv'].map(log).join('')
    assert.deepEqual(logPathsOf(readNotebook(`format: 1\nentries:\n${entries}`)), ['a.csv', 'sub/b.csv'])
  })
})
