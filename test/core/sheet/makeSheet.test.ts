import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { makeSheet } from '../../../src/core/sheet/makeSheet'
import type { Sheet } from '../../../src/core/sheet/sheet'

const machine = `format: 1
machine:
  name: Tern 650
  use: track
  front: {travel: 120, spring_rate: {left: 9, right: 9.5}}
  rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
rider: {name: Oda Renn, kitted_mass: 84}
adjusters:
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 12, place: fork caps, tool: 19 mm hex, faces: up}
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20, place: fork caps, faces: up, worked_from: above}
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22, place: shock foot, faces: down, worked_from: above, condition: worn}
  shock_preload: {on: shock, controls: preload, counts: mm, higher_is: less, mm_per_turn: 1.5, faces: up}
  rings: {on: shock, controls: preload, counts: rings}
  cam: {on: shock, controls: preload, counts: steps, higher_is: less}
  front_tyre: {on: tyres, controls: tyre_pressure, counts: bar}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings:
      fork_preload: 36 flats in
      fork_rebound: {left: 3 out, right: 6 out}
      fork_height: 5
      shock_rebound: 7
      shock_preload: 158
      rings: 3
      cam: step 4
    sag:
      front: {extended: 152, bike: [134, 128], rider: [124, 116]}
    notes: read by lamplight
  - id: run-1
    date: 2026-04-19
    settings: {shock_rebound: 9 out}
    reason: kicked over the ripples
    ride: {front_tyre_hot: 2.35}
  - id: run-2
    from: run-1
    settings: {fork_preload: 7 in, fork_rebound: 3 out}
`

const sheetOf = (id: string, text = machine, units = fileUnits): Sheet => {
  const notebook = readNotebook(text)
  return makeSheet(notebook, notebook.entries.find(({ key }) => key === id)!, units)
}
const position = (sheet: Sheet, label: string) => sheet.positions.flatMap(({ rows }) => rows).find((row) => row.label === label)!
const group = (sheet: Sheet, label: string) => sheet.measures.find((each) => each.label === label)

describe('a hand-over sheet', () => {
  it('says which machine, for whom, which state, its reason and its notes', () => {
    const { machine: name, about, entry, date, marks, notes, reason, cautions } = sheetOf('as-found')
    assert.deepEqual([name, about, entry, date, marks, notes, reason], ['Tern 650', ['track', 'rider Oda Renn, 84 kg in kit'], 'as-found', '2026-04-18', ['as found'], 'read by lamplight', undefined])
    assert.equal(cautions.length, 8)
    assert.deepEqual([sheetOf('run-2').marks, sheetOf('run-1').reason], [['from run-1'], 'kicked over the ripples'])
  })

  it('tells where everything stands in its own count, both legs as one where they are alike', () => {
    const sheet = sheetOf('as-found')
    assert.deepEqual(sheet.positions.map(({ label, rows }) => [label, rows.length]), [['Fork', 3], ['Shock', 4], ['Tyres', 1]])
    assert.deepEqual(position(sheet, 'Fork preload').stands, [{ leg: 'both legs', text: '6 turns in' }])
    assert.deepEqual(position(sheet, 'Fork rebound').stands, [{ leg: 'left leg', text: '3 clicks out' }, { leg: 'right leg', text: '6 clicks out' }])
    assert.deepEqual(position(sheet, 'Shock rebound').stands, [{ leg: '', text: '7 clicks out' }])
    assert.deepEqual(position(sheet, 'Front tyre').stands, [{ leg: '', text: 'not recorded' }])
    assert.deepEqual(position(sheetOf('as-found', machine.replace('shock_rebound: 7', 'shock_rebound: about 7')), 'Shock rebound').stands, [{ leg: '', text: 'about 7' }])
  })

  it('says from which end each is counted and which way closes it, as seen from where it is worked', () => {
    const sheet = sheetOf('as-found')
    const words = (label: string) => [position(sheet, label).counted, position(sheet, label).way]
    assert.deepEqual(words('Fork preload'), ['counted in from backed off', 'clockwise, facing its head, turns it in: more preload'])
    assert.deepEqual(words('Fork rebound'), ['counted out from closed', 'clockwise, seen from above, turns it in: more rebound damping'])
    // Its head faces down: from above it closes the other way.
    assert.deepEqual(words('Shock rebound'), ['counted out from closed', 'anticlockwise, seen from above, turns it in: more rebound damping'])
    assert.deepEqual(words('Shock preload'), ['a higher figure is less preload', 'clockwise, facing its head, is more preload'])
    assert.deepEqual(words('Rings')[0], 'counted by the rings that show')
    assert.deepEqual(words('Cam')[0], 'step 1 is the most spring preload')
    assert.deepEqual(words('Fork height'), ['measured from the clamp’s top to the tube’s top', ''])
    assert.equal(position(sheet, 'Fork preload').where, 'fork caps · 19 mm hex')
  })

  it('tells what this entry changed', () => {
    const sheet = sheetOf('run-2')
    assert.equal(position(sheet, 'Fork preload').changed, '1 turn in: more preload')
    assert.equal(position(sheet, 'Fork rebound').changed, 'right 3 clicks in: more rebound damping')
    assert.equal(position(sheet, 'Shock rebound').changed, undefined)
    assert.equal(position(sheetOf('run-1'), 'Shock rebound').changed, '2 clicks out: less rebound damping')
  })

  it('has the sag of the day it was measured, and says when it can no longer hold', () => {
    assert.deepEqual(group(sheetOf('as-found'), 'Sag, front'), { label: 'Sag, front', rows: [{ label: 'Static', text: '21 mm (18 %)' }, { label: 'Rider', text: '32 mm (27 %)' }] })
    assert.equal(group(sheetOf('run-1'), 'Sag, front')!.note, 'measured in as-found')
    assert.equal(group(sheetOf('run-2'), 'Sag, front')!.note, 'measured in as-found; Fork preload changed since: measure again')
    assert.equal(group(sheetOf('as-found'), 'Sag, rear'), undefined)
  })

  it('has springs, geometry and the tyres as they got warm, in the units asked for', () => {
    const sheet = sheetOf('run-1')
    assert.deepEqual(group(sheet, 'Springs')!.rows, [{ label: 'Fork, left leg', text: '9 N/mm' }, { label: 'Fork, right leg', text: '9.5 N/mm' }, { label: 'Shock', text: '95 N/mm' }])
    assert.deepEqual(group(sheet, 'Geometry')!.rows.map(({ label }) => label), ['Rake', 'Trail', 'Wheelbase'])
    assert.deepEqual(group(sheet, 'Geometry')!.rows[0], { label: 'Rake', text: '24°' })
    assert.deepEqual(group(sheet, 'Tyres, hot')!.rows, [{ label: 'Front', text: '2.35 bar' }])
    const inches = sheetOf('as-found', machine, { ...fileUnits, length: 'in', mass: 'lb' })
    assert.deepEqual(group(inches, 'Sag, front')!.rows[0], { label: 'Static', text: '0.83 in (18 %)' })
    assert.match(inches.about[1]!, /185 lb/)
  })

  it('says what to watch for: what is found here, and what was found before and still stands', () => {
    const messages = (id: string) => sheetOf(id).watch.map(({ message }) => message)
    assert.match(messages('as-found').join('\n'), /^Fork rebound: the left leg stands at 3 out, the right at 6 out; [^(]*$/m)
    assert.match(messages('run-1').join('\n'), /^Fork rebound: the left leg stands at 3 out.*\(since as-found\)$/m)
    assert.doesNotMatch(messages('run-2').join('\n'), /left leg stands/)
    for (const id of ['as-found', 'run-1', 'run-2']) {
      assert.match(messages(id).join('\n'), /^Shock rebound: what holds it is worn\./m)
      assert.doesNotMatch(messages(id).join('\n'), /reason/, 'what only concerns the notebook')
    }
  })

  it('puts what is worst first', () => {
    const { watch } = sheetOf('as-found', machine.replace('fork_height: 5', 'fork_height: {left: 5, right: 9}'))
    assert.match(watch[0]!.message, /^Stop: Fork height/)
    const rank = { error: 0, warning: 1, info: 2 }
    assert.deepEqual(watch.map(({ severity }) => rank[severity]), watch.map(({ severity }) => rank[severity]).sort())
  })
})
