import assert from 'node:assert/strict'
import { exportNotebook } from '../../../src/core/export/exportNotebook'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { near } from '../compute/near'
import { sketchWith, ternSketch } from '../derived/ternSketch'

const exported = (text: string) => exportNotebook(readNotebook(text))
const [asFound, run1] = exported(ternSketch).entries

describe('exportNotebook', () => {
  it('names each entry and the one it comes from, written or by order', () => {
    assert.equal(exported(ternSketch).machine, 'Tern 650')
    assert.deepEqual([asFound!.id, 'from' in asFound!, run1!.id, run1!.from], ['as-found', false, 'run-1', 'as-found'])
    const unnamed = exported('format: 1\nentries:\n  - date: 2026-01-01\n  - {id: b}\n  - {id: b}\n')
    assert.deepEqual(unnamed.entries.map(({ id, from }) => [id, from]), [['#1', undefined], ['#2', '#1'], ['#3', '#2']])
  })

  it('resolves the state: every adjuster, per leg, carried where it was not set', () => {
    assert.deepEqual(run1!.settings, {
      fork_preload: { left: { value: 0, unit: 'turns', counted: 'in' }, right: { value: 0, unit: 'turns', counted: 'in' } },
      fork_rebound: { left: { value: 3, unit: 'clicks', counted: 'out' }, right: { value: 3, unit: 'clicks', counted: 'out' } },
      shock_rebound: { value: 7, unit: 'clicks', counted: 'out' },
      fork_height: { left: { value: 5, unit: 'mm' }, right: { value: 5, unit: 'mm' } },
    })
    assert.deepEqual(asFound!.settings.fork_rebound, { left: { value: 3, unit: 'clicks', counted: 'out' }, right: { value: 6, unit: 'clicks', counted: 'out' } })
  })

  it('brings every notation into the adjuster’s own count, and leaves what cannot be as it was written', () => {
    const told = (position: string) => exported(sketchWith(['fork_preload: 0 in', `fork_preload: {left: ${position}}`])).entries[0]!.settings.fork_preload
    assert.deepEqual(told('4 flats in'), { left: { value: 0.666666666667, unit: 'turns', counted: 'in' } })
    assert.deepEqual(told('2 out'), { left: { value: 10, unit: 'turns', counted: 'in' } })
    assert.deepEqual(told('3 rings'), { left: { value: 3, unit: 'rings' } })
    assert.equal(told('a few'), undefined)
  })

  // By hand: 152 − (128 + 122) / 2 = 27; 152 − (118 + 110) / 2 = 38; 118 − 110 = 8. Each length u = 1/√3 mm.
  it('JCGM 100:2008, 5.1.2: the sketch’s sags, shares and friction with their standard uncertainties', () => {
    const { front } = asFound!.derived
    const u = 1 / Math.sqrt(3)
    for (const [name, value, uncertainty] of [
      ['static_sag_mm', 27, u * Math.sqrt(1.5)], ['rider_sag_mm', 38, u * Math.sqrt(1.5)],
      ['static_sag_pct', 22.5, (100 / 120) * u * Math.sqrt(1.5)], ['rider_sag_pct', 31.6666667, (100 / 120) * u * Math.sqrt(1.5)],
      ['friction_mm', 8, u * Math.SQRT2],
    ] as const) {
      near(front[name], value, 1e-6, name)
      near(front[`${name}_u`], uncertainty, 1e-9, `${name}_u`)
    }
  })

  it('the sketch’s wheel rate by hand: g · 84 kg · 0.4 / 11 mm, and its geometry by plane trigonometry, without an uncertainty', () => {
    near(asFound!.derived.front.wheel_rate_n_per_mm, 29.954858, 1e-6)
    near(asFound!.derived.front.wheel_rate_n_per_mm_u, 4.602, 1e-3)
    for (const { derived } of [asFound!, run1!]) {
      assert.deepEqual(Object.keys(derived.geometry), ['rake_deg', 'trail_mm', 'normal_trail_mm', 'wheelbase_mm'])
      near(derived.geometry.trail_mm, 100.7296, 1e-4)
      near(derived.geometry.normal_trail_mm, 92.02099, 1e-5)
    }
  })

  it('leaves out what was not measured in the entry: nothing is carried over, nothing is null, zero or NaN', () => {
    assert.deepEqual(run1!.derived.front, {})
    assert.deepEqual(asFound!.derived.rear, {})
    assert.deepEqual(asFound!.derived.bounce, { front: {}, rear: {} })
    assert.deepEqual(exported('format: 1\nentries:\n  - id: a\n').entries[0], { id: 'a', settings: {}, derived: { front: {}, rear: {}, geometry: {}, bounce: { front: {}, rear: {} } } })
    assert.deepEqual(exported('').entries, [])
  })

  it('gives the day, the travel used as noted and the log’s path, but none that leads out of the folder', () => {
    const [entry] = exported('format: 1\nentries:\n  - {id: a, date: 2026-04-18, ride: {front_travel_used: 4 in, rear_travel_used: some, log: logs/a.csv}}\n').entries
    assert.deepEqual([entry!.date, entry!.ride], ['2026-04-18', { front_travel_used_mm: 101.6, log: 'logs/a.csv' }])
    assert.equal(exported('format: 1\nentries:\n  - {id: a, ride: {log: ../a.csv}}\n').entries[0]!.ride, undefined)
  })

  it('gives the bounce test in ratio and Hz', () => {
    const text = sketchWith(['    sag:\n', '    bounce: {rear: {heights: [40, 10, 2.5], seconds: 0.5}}\n    sag:\n'])
    const { rear } = exported(text).entries[0]!.derived.bounce
    assert.deepEqual(Object.keys(rear).filter((name) => !name.endsWith('_u')), ['damping_ratio', 'damped_hz', 'natural_hz'])
    near(rear.damping_ratio, 0.4037128, 1e-6)
    near(rear.damped_hz, 2, 1e-9)
  })

  it('an adjuster with the name of a property is one like any other', () => {
    const text = 'format: 1\nadjusters:\n  __proto__: {on: shock, controls: rebound, counts: clicks}\nentries:\n  - {id: a, settings: {__proto__: 3}}\n'
    assert.deepEqual(Object.entries(exported(text).entries[0]!.settings), [['__proto__', { value: 3, unit: 'clicks', counted: 'out' }]])
  })
})
