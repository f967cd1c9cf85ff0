import assert from 'node:assert/strict'
import fc from 'fast-check'
import { charts } from '../../../src/core/charts'
import { buildCharts, chartOfRow } from '../../../src/core/charts/buildCharts'
import type { ChartGroup, ChartView } from '../../../src/core/charts/view'
import { computedRows } from '../../../src/core/grid/computed'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { sketchWith, ternSketch } from '../derived/ternSketch'
import { Choices } from '../grid/choices'
import { writeRandomNotebook } from '../grid/writeRandomNotebook'

const groups: readonly ChartGroup[] = ['sag', 'force', 'geometry']

/** What must hold of any chart, whatever the notebook. */
function assertSound({ key, series, bands, table, wanting, x }: ChartView): void {
  for (const each of series) {
    const lengths = [each.y, each.u ?? each.x, each.said ?? each.x, each.entries ?? each.x].map(({ length }) => length)
    assert.deepEqual(lengths, lengths.map(() => each.x.length), `${key}: a column of ‘${each.label}’ is shorter`)
    assert.ok([...each.x, ...each.y, ...(each.u ?? [])].every((value) => value === null || Number.isFinite(value)), `${key}: not finite`)
    if (x.names) assert.ok(each.x.every((at) => x.names![at] !== undefined), `${key}: a point without a name`)
  }
  assert.ok(bands.every(({ from, to }) => from <= to))
  assert.deepEqual(table.rows.filter((row) => row.length !== table.columns.length), [], `${key}: a row of another length`)
  assert.equal(series.length === 0, wanting !== undefined && wanting.length > 0, `${key}: nothing to draw, or a reason why`)
}

describe('the charts', () => {
  it('have keys of their own, and each a row of the grid that leads to it', () => {
    assert.equal(new Set(charts.map(({ key }) => key)).size, charts.length)
    const known = new Set(computedRows.map(({ key }) => key))
    const rows = charts.flatMap((chart) => [...chart.rows])
    assert.deepEqual(rows.filter((row) => !known.has(row)), [])
    assert.equal(new Set(rows).size, rows.length)
    assert.deepEqual(charts.filter((chart) => chartOfRow(`computed/${chart.rows[0]!}`) !== chart.group), [])
  })

  it('are led to from no other row', () => {
    assert.deepEqual(['settings/fork_preload/left', 'computed/bounce.front.damped_hz', 'front.rider_sag_mm', ''].map(chartOfRow), [undefined, undefined, undefined, undefined])
  })

  it('say what to write down where a notebook has nothing for them', () => {
    for (const text of ['', 'format: 1\n', 'format: 1\nentries: []\n', 'format: 1\nentries:\n  - id: a\n  - id: b\n', '- 1\n- 2\n', '"', '__proto__: {machine: 1}\n']) {
      for (const chart of groups.flatMap((group) => buildCharts(readNotebook(text), group).charts)) {
        assertSound(chart)
        assert.deepEqual([chart.series, chart.table.rows], [[], []])
        assert.match(chart.wanting!.at(-1)!, /^(Measure|Write) /)
      }
    }
  })

  it('are sound for any notebook, in any unit', () => {
    const tape = fc.array(fc.nat(9999), { maxLength: 700, size: 'max' })
    const units = fc.constantFrom(fileUnits, { ...fileUnits, length: 'in', force: 'lbf' } as const)
    fc.assert(fc.property(tape, fc.constantFrom(...groups), units, (numbers, group, shown) => {
      const notebook = readNotebook(writeRandomNotebook(new Choices(numbers)))
      for (const { key } of [...notebook.entries.slice(0, 2), { key: 'no such entry' }]) for (const chart of buildCharts(notebook, group, key, shown).charts) assertSound(chart)
    }), { numRuns: 40 })
  })

  it('are sound for figures that make no sense', () => {
    const figure = fc.oneof(fc.double({ noNaN: true }), fc.constantFrom(0, -5, 1e308, 1e-300, '~', '"x"', '[]', '12 bar'))
    fc.assert(fc.property(fc.array(figure, { minLength: 12, maxLength: 12 }), (f) => {
      const text = `format: 1
machine:
  use: track
  front: {travel: ${f[0]}, spring_rate: ${f[1]}, spring_preload: ${f[2]}, air: {seal_diameter: ${f[3]}, bore: 38, oil_level: ${f[4]}, exponent: ${f[5]}}}
  rear: {travel: ${f[0]}, spring_rate: ${f[6]}, spring_preload: 5, leverage: [[0, 0], [${f[7]}, ${f[8]}], [130, 60]]}
  geometry: {rake: ${f[9]}, fork_offset: ${f[10]}, wheelbase: 1400, front_radius: 300, rear_radius: 315}
entries:
  - id: a
    sag: {front: {extended: ${f[11]}, bike: [${f[0]}, 122], rider: [${f[1]}, 110]}}
`
      for (const chart of groups.flatMap((group) => buildCharts(readNotebook(text), group).charts)) assertSound(chart)
    }), { numRuns: 80 })
  })

  it('are of the entry asked for where they change with it, else of the last', () => {
    const notebook = readNotebook(ternSketch)
    assert.deepEqual([buildCharts(notebook, 'force', 'as-found').ofEntry, buildCharts(notebook, 'force', 'gone').ofEntry, buildCharts(notebook, 'sag', 'as-found').ofEntry], ['as-found', 'run-1', undefined])
  })

  it('keep entries without an id apart', () => {
    const notebook = readNotebook(sketchWith(['  - id: run-1\n    date: 2026-04-18', '  - date: 2026-04-18\n    sag: {front: {extended: 152, rider: [118, 110]}}']))
    const [front] = buildCharts(notebook, 'sag').charts
    assert.deepEqual([front!.x.names, front!.series[1]!.entries], [['as-found', '#2'], ['as-found', '#2']])
  })
})
