import assert from 'node:assert/strict'
import { cardFor } from '../../../src/core/card/cardFor'
import { exportNotebook } from '../../../src/core/export/exportNotebook'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { diffGrid } from '../../../src/core/grid/diffGrid'
import { fileUnits, type DisplayUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { sketchWith, ternSketch } from '../derived/ternSketch'

const inches: DisplayUnits = { ...fileUnits, length: 'in', rate: 'lb/in', temperature: '°F' }

function show(text: string, units: DisplayUnits) {
  const view = buildGrid(readNotebook(text), [], units)
  const at = (row: string, column: string) => {
    const r = view.rows.findIndex(({ key }) => key === row)
    return { unit: view.rows[r]!.unit, ...view.cells[r]![view.columns.findIndex(({ key }) => key === column)]! }
  }
  return { view, at }
}

describe('a grid in the units asked for', () => {
  const { at, view } = show(ternSketch, inches)

  it('shows computed rows in them, with the unit on the row and in every sentence', () => {
    assert.deepEqual([at('computed/front.rider_sag_mm', 'as-found').text, at('computed/front.rider_sag_mm', 'as-found').unit], ['1.5', 'in'])
    assert.match(at('computed/front.rider_sag_mm', 'as-found').about!, /^0\.12 in above 0\.98 to 1\.38 in \(/)
    assert.deepEqual([at('computed/front.wheel_rate_n_per_mm', 'as-found').text, at('computed/front.wheel_rate_n_per_mm', 'as-found').unit], ['171 ± 26', 'lb/in'])
    assert.equal(at('computed/front.preload', 'as-found').about, 'sag then: 0.75 in bike alone, 1.18 in rider aboard')
    assert.match(at('computed/front.travel_used_pct', 'run-1').about!, /^0\.63 in in reserve/)
  })

  it('leaves what is typed as it was written, and what has no such unit', () => {
    assert.deepEqual([at('sag.front.extended', 'as-found').text, at('sag.front.extended', 'as-found').unit], ['152', 'mm'])
    assert.equal(at('settings/fork_height/left', 'as-found').text, '5')
    assert.deepEqual([at('computed/front.rider_sag_pct', 'as-found').text, at('computed/front.rider_sag_pct', 'as-found').unit], ['31.7', '%'])
    assert.equal(at('computed/geometry.rake_deg', 'as-found').unit, '°')
  })

  it('says nothing in mm or N/mm any more but sources and windows as they are written', () => {
    const said = view.cells.flatMap((row, r) => (view.rows[r]!.kind === 'computed' ? row.flatMap(({ about }) => about ?? []) : []))
    assert.ok(said.length > 10)
    for (const about of said) assert.doesNotMatch(about.replace(/\([^)]*\)/g, ''), /\d (mm|N\/mm)\b/, about)
  })

  it('is another grid, so that a change of the setting is shown at once', () => {
    assert.equal(diffGrid(show(ternSketch, fileUnits).view, view), undefined)
    assert.deepEqual(diffGrid(show(ternSketch, inches).view, view), { columns: [], cells: [] })
  })

  it('changes nothing of the export, whose names carry their units', () => {
    const notebook = readNotebook(ternSketch)
    buildGrid(notebook, [], inches)
    assert.equal(exportNotebook(notebook).entries[0]!.derived.front.rider_sag_mm, 38)
  })
})

describe('a card in the units asked for', () => {
  const lines = (row: string, heading: string, text = ternSketch) =>
    cardFor(readNotebook(text), `computed/${row}`, 'as-found', inches)!.sections.find((section) => section.heading === heading)!.lines

  it('keeps the formula in the units in which it holds, and says result and inputs in both', () => {
    assert.deepEqual(lines('front.rider_sag_mm', 'How it comes about').slice(0, 2), ['sag = L1 − (L2 + L3) / 2', 'sag = 152 − (118 + 110) / 2'])
    assert.match(lines('front.rider_sag_mm', 'How it comes about')[2]!, /^= 38 ± 0\.71 mm \(1\.496 ± 0\.028 in\)$/)
    assert.match(lines('front.rider_sag_mm', 'From')[0]!, /^L1 = 152 ± 0\.58 mm \(5\.984 ± 0\.023 in\): length with the wheel off the ground/)
  })

  it('says nothing twice in the format’s own units', () => {
    const card = cardFor(readNotebook(ternSketch), 'computed/front.rider_sag_mm', 'as-found')!
    assert.equal(card.sections.find(({ heading }) => heading === 'How it comes about')!.lines[2], '= 38 ± 0.71 mm')
  })

  it('turns a temperature by its zero', () => {
    const text = sketchWith(['  fork_height: {', '  front_tyre: {on: tyres, controls: tyre_pressure, counts: bar}\n  fork_height: {'],
      ['fork_height: 5', 'fork_height: 5\n      front_tyre: 2'], ['    sag:\n', '    conditions: {air: 20}\n    ride: {front_tyre_hot: 2.411}\n    sag:\n'])
    assert.match(lines('front.tyre_rise_pct', 'Here', text)[0]!, /at 140 °F,/)
  })
})
