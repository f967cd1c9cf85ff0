import assert from 'node:assert/strict'
import { sagChart } from '../../../src/core/charts/sagChart'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { near } from '../compute/near'
import { sketchWith, ternSketch } from '../derived/ternSketch'

const draw = (text: string, end: 'front' | 'rear' = 'front', units = fileUnits) => sagChart(end).build(readNotebook(text), undefined, units)
const second = '    ride: {laps: 6, front_travel_used: 104}'
const withSecond = sketchWith([second, `    sag: {front: {extended: 152, rider: [125, 121]}}\n${second}`])

describe('the chart of sag', () => {
  it('has both load cases with their uncertainty, from the lengths of each entry alone', () => {
    const { series, x } = draw(withSecond)
    assert.deepEqual(x.names, ['as-found', 'run-1'])
    assert.deepEqual(series.map(({ label, x: at, y, row }) => [label, at, y, row]), [
      ['bike alone', [0], [27], 'computed/front.static_sag_mm'], ['rider aboard', [0, 1], [38, 29], 'computed/front.rider_sag_mm'],
    ])
    // By hand: u² = (1/√3)² + ½ · (1/√3)², three readings to ± 1 mm of which two are averaged.
    near(series[1]!.u![0]!, Math.sqrt(1 / 3 + 1 / 6), 1e-12)
  })

  it('leaves out entries that measured nothing, so that the readings stand beside one another', () => {
    const { x, table } = draw(ternSketch)
    assert.deepEqual([x.names, table.rows.length], [['as-found'], 1])
  })

  it('has the windows of this machine as bands, with their source', () => {
    const { bands, notes } = draw(ternSketch)
    assert.deepEqual(bands.map(({ key, from, to }) => [key, from, to]), [['bike', 15, 25], ['rider', 25, 35]])
    assert.deepEqual(notes, ['Window, bike alone: common practice, no source.', 'Window, rider aboard: Thede & Parks, Motorcycle Suspension Bible: road race.'])
    const own = draw(sketchWith(['front: {travel: 120,', 'front: {travel: 120, targets: {rider_sag: [25 %, 30 %]},']))
    assert.deepEqual([own.bands[1]!.from, own.bands[1]!.to, own.notes[1]], [30, 36, 'Window, rider aboard: this machine’s own window (25 to 30 % of 120 mm).'])
  })

  it('has no band for a load case that nobody measured, and says where a window is not known', () => {
    const riderOnly = draw(sketchWith(['bike: [128, 122], ', '']))
    assert.deepEqual(riderOnly.bands.map(({ key }) => key), ['rider'])
    const noUse = draw(sketchWith(['  use: track\n', '']))
    assert.deepEqual([noUse.bands, noUse.notes[0]], [[], 'No window for the bike alone: it needs what the machine is used for.'])
  })

  it('says each point in words, with entry, number, uncertainty and judgement', () => {
    const { series } = draw(withSecond)
    assert.deepEqual(series[1]!.said, ['as-found, rider aboard: 38 ± 0.7 mm, 3 mm above its window', 'run-1, rider aboard: 29 ± 0.7 mm, in its window'])
    const close = draw(sketchWith(['rider: [118, 110]', 'rider: [122, 111]']))
    assert.equal(close.series[1]!.said![0], 'as-found, rider aboard: 35.5 ± 0.7 mm, 0.5 mm above its window, perhaps')
  })

  it('has a table that says the same', () => {
    const { table } = draw(withSecond)
    assert.deepEqual(table.columns, ['Entry', 'Bike alone, mm', 'Against 15 to 25 mm', 'Rider aboard, mm', 'Against 25 to 35 mm'])
    assert.deepEqual(table.rows, [
      ['as-found', '27 ± 0.7', '2 mm above', '38 ± 0.7', '3 mm above'],
      ['run-1', '', '', '29 ± 0.7', 'within'],
    ])
  })

  it('follows the units asked for, bands and uncertainty too', () => {
    const { y, series, bands, table } = draw(ternSketch, 'front', { ...fileUnits, length: 'in' })
    assert.equal(y.unit, 'in')
    // Exact: 1 in = 25.4 mm (international yard and pound agreement, 1959).
    near(series[1]!.y[0]!, 38 / 25.4, 1e-12)
    near(series[1]!.u![0]!, Math.sqrt(0.5) / 25.4, 1e-12)
    near(bands[1]!.to, 35 / 25.4, 1e-12)
    assert.deepEqual(table.rows[0]!.slice(3), ['1.5 ± 0.03', '0.12 in above'])
  })

  it('says what to measure where no entry did', () => {
    const { wanting, table, series } = draw(ternSketch, 'rear')
    assert.deepEqual([series, table.rows], [[], []])
    assert.match(wanting!.join(' '), /^No entry has measured the rear sag\. Measure one end three times: .* under ‘Sag, rear’/)
    assert.match(draw('format: 1\n').wanting![0]!, /no entry yet/)
  })
})
