import assert from 'node:assert/strict'
import { forceChart } from '../../../src/core/charts/forceChart'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { near } from '../compute/near'
import { readEntry, sketchWith } from '../derived/ternSketch'

function draw(text: string, end: 'front' | 'rear', key?: string, units = fileUnits) {
  const { notebook, entry } = readEntry(text, key)
  return forceChart(end).build(notebook, entry, units)
}

const front = 'front: {travel: 120, spring_rate: 9.5}'
const rear = 'rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45}'
const fitted = sketchWith([front, 'front: {travel: 120, spring_rate: 9.5, spring_preload: 10}'], [rear, 'rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45, spring_preload: 12}'])
const turned = fitted.replace('{fork_rebound: 3 out}', '{fork_preload: 4 in}')

describe('the chart of force over travel', () => {
  it('draws the springs of the fork over its travel: k · (p + x) of both legs', () => {
    const { series, x, y } = draw(fitted, 'front', 'as-found')
    const [whole] = series
    assert.deepEqual([whole!.x.length, whole!.x[0], whole!.x.at(-1), x.unit, y.unit], [21, 0, 120, 'mm', 'N'])
    near(whole!.y[0]!, 2 * 9.5 * 10, 1e-9)
    near(whole!.y.at(-1)!, 2 * 9.5 * 130, 1e-9)
    assert.equal(whole!.said![0], 'as-found, springs: 190 N at 0 mm of travel')
  })

  it('draws the shock’s spring at the wheel: k · (p + m·z) · m', () => {
    const [whole] = draw(fitted, 'rear').series
    near(whole!.y[0]!, 95 * 12 * 0.45, 1e-9)
    near(whole!.y.at(-1)!, 95 * (12 + 0.45 * 130) * 0.45, 1e-9)
  })

  it('is held against the baseline, else against the first entry, unless it is the same', () => {
    assert.deepEqual(draw(turned, 'front', 'run-1').series.map(({ label }) => label), ['run-1, springs', 'as-found, springs'])
    const same = draw(fitted, 'front', 'run-1')
    assert.deepEqual([same.series.length, same.notes[0]], [1, 'The same as in as-found.'])
    assert.deepEqual(draw(turned, 'front', 'as-found').series.map(({ label }) => label), ['as-found, springs'])
    assert.deepEqual(draw(turned, 'front', 'run-1').series[1]!.entries![0], 'as-found')
  })

  it('draws springs and air each and together', () => {
    const air = 'air: {seal_diameter: 43, bore: 38, oil_level: 130, spring_volume: 45 ml, pressure: 0.4, exponent: 1.3}'
    const { series, notes, table } = draw(sketchWith([front, `front: {travel: 120, spring_rate: 9.5, spring_preload: 10, ${air}}`]), 'front', 'as-found')
    assert.deepEqual(series.map(({ label }) => label), ['as-found, springs and air', 'springs alone', 'air alone'])
    series[0]!.y.forEach((sum, at) => near(sum!, series[1]!.y[at]! + series[2]!.y[at]!, 1e-9))
    // By hand, both legs: the gauge pressure on the section with the fork extended; p·Vⁿ of the room that is left at the end.
    const [A, level] = [(Math.PI / 4) * 43 ** 2, (Math.PI / 4) * 38 ** 2 * 130 - 45_000]
    near(series[2]!.y[0]!, 2 * 0.04 * A, 1e-6)
    near(series[2]!.y.at(-1)!, 2 * 0.1 * A * ((0.4 + 1.01325) * ((level + A * 120) / level) ** 1.3 - 1.01325), 1e-6)
    assert.match(notes.join(' '), /The air of a fast stroke \(n = 1\.3\)/)
    assert.deepEqual(table.columns, ['Travel, mm', 'As-found, springs and air, N', 'Springs alone, N', 'Air alone, N'])
  })

  it('follows a measured leverage, and ends where that does', () => {
    const table = sketchWith([rear, 'rear: {travel: 130, spring_rate: 95, spring_preload: 12, leverage: [[0, 0], [50, 20], [100, 45]]}'])
    const { series, notes } = draw(table, 'rear')
    assert.ok(series[0]!.x.at(-1)! <= 100 && series[0]!.x.at(-1)! > 90)
    assert.match(notes.join(' '), /ends where the measured leverage does, before the travel of 130 mm/)
  })

  it('has a table of the same numbers, in the units asked for', () => {
    const { table, series } = draw(turned, 'front', 'run-1', { ...fileUnits, length: 'in', force: 'lbf' })
    assert.deepEqual(table.columns, ['Travel, in', 'Run-1, springs, lbf', 'As-found, springs, lbf'])
    // 1 lbf = 4.4482216152605 N exactly (NIST SP 811, appendix B.8).
    near(series[0]!.y[0]!, (2 * 9.5 * 14) / 4.4482216152605, 1e-9)
    assert.equal(Number(table.rows[0]![1]), Math.round(Number(table.rows[0]![1]) * 10) / 10)
  })

  it('names the facts that are missing and where to write them', () => {
    const { wanting, series } = draw(sketchWith(), 'rear')
    assert.deepEqual(series, [])
    assert.match(wanting!.join(' '), /^In run-1 it needs: the spring’s preload as fitted \(`spring_preload`\)\. Write under `machine: rear`/)
    assert.match(draw(fitted.replace('travel: 120, ', ''), 'front').wanting![0]!, /needs: travel of the front/)
  })
})
