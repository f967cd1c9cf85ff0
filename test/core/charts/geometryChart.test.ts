import assert from 'node:assert/strict'
import { rakeChart, trailChart } from '../../../src/core/charts/geometryChart'
import { geometryOf } from '../../../src/core/derived/geometryOf'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { near } from '../compute/near'
import { sketchWith, ternSketch } from '../derived/ternSketch'

const raised = sketchWith(['{fork_rebound: 3 out}', '{fork_height: 15}'])
const draw = (chart: typeof rakeChart, text: string) => chart.build(readNotebook(text), undefined, fileUnits)

describe('the charts of rake and trail', () => {
  it('have every entry, a carried setting counting as set', () => {
    const { series, x } = draw(trailChart, `${raised}  - id: run-2\n    reason: nothing moved\n`)
    assert.deepEqual(x.names, ['as-found', 'run-1', 'run-2'])
    const [as, now, then] = series[0]!.y
    // By hand: trail = (R · sin ε − f) / cos ε with R 300, ε 24°, f 30.
    near(as!, (300 * Math.sin((24 * Math.PI) / 180) - 30) / Math.cos((24 * Math.PI) / 180), 1e-9)
    assert.ok(now! < as!)
    assert.equal(then, now)
  })

  it('say degrees with their sign and millimetres with their unit', () => {
    assert.equal(draw(rakeChart, raised).series[0]!.said![0], 'as-found, as it stands: 24°')
    assert.equal(draw(trailChart, raised).series[0]!.said![0], 'as-found, as it stands: 100.7 mm')
  })

  it('add the machine sunk by its rider sag where both ends were measured', () => {
    const both = sketchWith(['rider: [118, 110]}', 'rider: [118, 110]}\n      rear: {extended: 600, rider: [570, 566]}'])
    const { series, table } = draw(rakeChart, both)
    const notebook = readNotebook(both)
    const sunk = geometryOf(notebook, notebook.entries[0]!, 'riderSag').rakeDeg
    assert.ok('value' in sunk)
    assert.deepEqual([series[1]!.x, series[1]!.y, series[1]!.row], [[0], [sunk.value], 'computed/geometry_at_rider_sag.rake_deg'])
    assert.deepEqual(table.rows.map((row) => row[2] !== ''), [true, false])
    assert.match(draw(rakeChart, ternSketch).notes.join(' '), /rider sag of both ends/)
  })

  it('name what is missing of the figures', () => {
    const { wanting } = draw(trailChart, sketchWith(['  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}\n', '']))
    assert.match(wanting!.join(' '), /^Trail needs: rake.* Write what the manual or a measurement gives under `machine: geometry`/)
  })
})
