import assert from 'node:assert/strict'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { computedRows } from '../../../src/core/grid/computed'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { sketchWith, ternSketch } from '../derived/ternSketch'

function gridOf(text: string) {
  const view = buildGrid(readNotebook(text), [])
  const cell = (row: string, column: string) => {
    const [r, c] = [view.rows.findIndex(({ key }) => key === `computed/${row}`), view.columns.findIndex(({ key }) => key === column)]
    assert.ok(r >= 0, `no row ${row}`)
    return view.cells[r]![c]!
  }
  return { view, cell, rows: view.rows.map(({ key }) => key) }
}

describe('the computed rows', () => {
  it('show a wheel rate with its uncertainty and how it compares with the springs fitted', () => {
    const { cell } = gridOf(ternSketch)
    assert.deepEqual(cell('front.wheel_rate_n_per_mm', 'as-found'), { state: 'computed', text: '30 ± 4.6', about: '44 % above the springs fitted, within twice the uncertainty' })
    assert.deepEqual(cell('front.fitted_rate_n_per_mm', 'as-found'), { state: 'computed', text: '20.8' })
  })

  it('say why a number is absent', () => {
    assert.deepEqual(gridOf(ternSketch).cell('front.wheel_rate_n_per_mm', 'run-1'), { state: 'computed', text: '', about: 'needs length, bike alone and length, rider aboard' })
  })

  it('tell preload in the adjuster’s own count and what the sags become', () => {
    const cell = gridOf(ternSketch).cell('front.preload', 'as-found')
    assert.deepEqual([cell.text, cell.about], ['8 turns in, to 8 turns in', 'sag then: 19 mm bike alone, 30 mm rider aboard'])
    const short = gridOf(sketchWith(['range: 12', 'range: 2'])).cell('front.preload', 'as-found')
    assert.match(short.about ?? '', /range ends .* too soft/)
  })

  it('judge the spring by both sags, and say so where the uncertainty would allow otherwise', () => {
    assert.equal(gridOf(ternSketch).cell('front.spring', 'as-found').text, 'suits the load, perhaps')
    const soft = gridOf(sketchWith(['bike: [128, 122]', 'bike: [143, 137]'])).cell('front.spring', 'as-found')
    assert.match(soft.text, /^too soft$/)
    assert.match(soft.about ?? '', /with more preload first, the bike alone would sag 9 mm; [\d.]+ N\/mm would meet both windows; the usual steps are /)
  })

  it('show the geometry of every entry and its change since the baseline', () => {
    const { cell } = gridOf(sketchWith(['    as_found: true', '    as_found: true\n    baseline: true'], ['{fork_rebound: 3 out}', '{fork_height: 15}']))
    assert.equal(cell('geometry.trail_mm', 'as-found').text, '100.7')
    assert.match(cell('geometry.trail_mm', 'run-1').about ?? '', /^−2\.\d mm since as-found \(baseline\)$/)
    assert.match(cell('geometry.rake_deg', 'run-1').about ?? '', /^−0\.\d\d° since as-found \(baseline\)$/)
  })

  it('show the geometry at the rider’s sag, with its change since a baseline that was measured too', () => {
    const rear: [string, string] = ['      front: {extended: 152, bike: [128, 122], rider: [118, 110]}', '      front: {extended: 152, bike: [128, 122], rider: [118, 110]}\n      rear: {extended: 600, bike: 590, rider: 570}']
    const { cell } = gridOf(sketchWith(['    as_found: true', '    as_found: true\n    baseline: true'], rear,
      ['{fork_rebound: 3 out}', '{fork_height: 15}\n    sag: {front: {extended: 152, rider: [118, 110]}, rear: {extended: 600, rider: 570}}']))
    const at = cell('geometry_at_rider_sag.rake_deg', 'as-found')
    assert.ok(Number(at.text) < 24 && Number(at.text) > 23, at.text)
    assert.equal(at.about, undefined)
    assert.match(cell('geometry_at_rider_sag.trail_mm', 'run-1').about ?? '', /^−2\.\d mm since as-found \(baseline\)$/)
    assert.ok(Number(cell('geometry_at_rider_sag.wheelbase_mm', 'as-found').text) < 1400)
  })

  it('show travel used with its reserve, and the bounce test in plain words', () => {
    const { cell } = gridOf(sketchWith(['    sag:\n', '    bounce: {rear: [40, 10]}\n    sag:\n']))
    const used = cell('front.travel_used_pct', 'run-1')
    assert.deepEqual([used.text, used.about], ['87', '16 mm in reserve: travel is well used, with a reserve for a harder place'])
    const ratio = cell('bounce.rear.damping_ratio', 'as-found')
    assert.match(ratio.text, /^0\.4 ± 0\.0[12]$/)
    assert.match(ratio.about ?? '', /^swings 25 % past its rest/)
  })

  it('stay away where a notebook has nothing for them to speak of', () => {
    const bare = gridOf('format: 1\nadjusters:\n  ring: {on: shock, controls: preload, counts: steps}\nentries:\n  - id: a\n').rows.filter((key) => key.startsWith('computed/'))
    assert.deepEqual(bare.filter((key) => !/sag_(mm|pct)$|friction_mm$/.test(key)), [])
    const sketch = gridOf(ternSketch).rows
    const has = (start: string) => sketch.some((key) => key.startsWith(start))
    assert.ok(has('computed/geometry.') && !has('computed/bounce.') && !has('computed/rear.wheel_rate') && !has('computed/loads.') && !has('group/springs'))
  })

  it('have keys and titles of their own', () => {
    assert.equal(new Set(computedRows.map(({ key }) => key)).size, computedRows.length)
    const titles = computedRows.map(({ group, label, detail }) => `${group} ${label} ${detail ?? ''}`)
    assert.equal(new Set(titles).size, titles.length)
  })
})
