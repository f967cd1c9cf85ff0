import assert from 'node:assert/strict'
import { fittedRateOf, impliedRateOf, rateComparisonOf } from '../../../src/core/derived/wheelRateOf'
import { sagOf } from '../../../src/core/derived/sagOf'
import { get, missingOf, near, valueOf } from '../compute/near'
import { readEntry, sketchWith, ternSketch } from './ternSketch'

const found = readEntry(ternSketch, 'as-found')

describe('sagOf', () => {
  it('JCGM 100:2008, 4.3.7 and 5.1.2: a tape read to ±1 mm gives a sag of two readings u = √(3/2) · 1/√3 mm', () => {
    near(get(sagOf(found.notebook, found.entry, 'front', 'rider')).value, 38, 1e-9)
    near(get(sagOf(found.notebook, found.entry, 'front', 'rider')).u, 0.7071068, 1e-6)
  })

  it('takes the notebook’s own resolution of reading', () => {
    const { notebook, entry } = readEntry(sketchWith(['use: track', 'use: track\n  reading_resolution: 0.5']), 'as-found')
    near(get(sagOf(notebook, entry, 'front', 'rider')).u, 0.7071068 / 2, 1e-6)
    const nonsense = readEntry(sketchWith(['use: track', 'use: track\n  reading_resolution: -3']), 'as-found')
    near(get(sagOf(nonsense.notebook, nonsense.entry, 'front', 'rider')).u, 0.7071068, 1e-6)
  })
})

describe('impliedRateOf', () => {
  it('Tern 650 by hand: 9.80665 · 84 · 0.4 / 11 N/mm, with the assumed share of the rider said and in its uncertainty', () => {
    const rate = get(impliedRateOf(found.notebook, found.entry, 'front'))
    near(rate.value, (9.80665 * 84 * 0.4) / 11, 1e-9)
    // Z of the load 47.560 / 11 = 4.3236; Z of the difference ½ (329.503 / 10.42265 − 329.503 / 11.57735) = 1.5766
    near(rate.u, Math.hypot(4.3236, 1.5766), 1e-3)
    assert.ok(rate.working.assumptions.some((line) => line.includes('40 ± 10 % of the rider on the front')))
  })

  it('goes by the scales where both weighings are known, the entry’s before the machine’s', () => {
    const weighed = 'rider: {kitted_mass: 84}'
    const machine = sketchWith([weighed, weighed], ['  geometry:', '  axle_loads: {bike: {front: 90}, rider: {front: 124}}\n  geometry:'])
    near(valueOf(impliedRateOf(readEntry(machine, 'as-found').notebook, readEntry(machine, 'as-found').entry, 'front')), (9.80665 * 34) / 11, 1e-9)
    const entry = machine.replace('    sag:\n', '    axle_loads: {rider: {front: 130}}\n    sag:\n')
    const read = readEntry(entry, 'as-found')
    near(valueOf(impliedRateOf(read.notebook, read.entry, 'front')), (9.80665 * 40) / 11, 1e-9)
  })

  it('is absent with its reasons, never zero: no sag in this entry, no load at all', () => {
    const run = readEntry(ternSketch, 'run-1')
    assert.deepEqual(missingOf(impliedRateOf(run.notebook, run.entry, 'front')), ['length, bike alone', 'length, rider aboard'])
    const unweighed = readEntry(sketchWith(['kitted_mass: 84', 'name: Oda']), 'as-found')
    assert.deepEqual(missingOf(impliedRateOf(unweighed.notebook, unweighed.entry, 'front')), ['the front axle’s load with and without the rider, or the rider’s kitted mass'])
  })
})

describe('fittedRateOf', () => {
  it('G. Byrnes, Leverage and Linkages: 95 N/mm at a ratio of 0.45 is 19.24 N/mm at the wheel; two of them are twice that', () => {
    near(valueOf(fittedRateOf(found.notebook, found.entry, 'rear')), 95 * 0.45 ** 2, 1e-9)
    const twin = readEntry(sketchWith(['motion_ratio: 0.45', 'motion_ratio: 0.45, springs: 2']))
    near(valueOf(fittedRateOf(twin.notebook, twin.entry, 'rear')), 2 * 95 * 0.45 ** 2, 1e-9)
  })

  it('statics of a sliding guide: both fork springs over the cosine of the rake, unequal legs added', () => {
    near(valueOf(fittedRateOf(found.notebook, found.entry, 'front')), 20.79809, 1e-4)
    const uneven = readEntry(sketchWith(['spring_rate: 9.5}', 'spring_rate: {left: 9, right: 0.95 kgf/mm}}']))
    near(valueOf(fittedRateOf(uneven.notebook, uneven.entry, 'front')), (9 + 0.95 * 9.80665) / Math.cos((24 * Math.PI) / 180), 1e-9)
    const oneLeg = readEntry(sketchWith(['spring_rate: 9.5}', 'spring_rate: {right: 19}}']))
    near(valueOf(fittedRateOf(oneLeg.notebook, oneLeg.entry, 'front')), 20.79809, 1e-4)
  })

  it('follows the springs that an adjuster says are fitted, entry by entry', () => {
    const text = sketchWith(['entries:', '  fork_springs: {on: fork, legs: [left, right], controls: spring_rate, counts: N/mm}\nentries:'], ['{fork_rebound: 3 out}', '{fork_rebound: 3 out, fork_springs: 10}'])
    const [before, after] = [readEntry(text, 'as-found'), readEntry(text, 'run-1')]
    near(valueOf(fittedRateOf(before.notebook, before.entry, 'front')), 20.79809, 1e-4)
    near(valueOf(fittedRateOf(after.notebook, after.entry, 'front')), 20 / Math.cos((24 * Math.PI) / 180), 1e-9)
  })

  it('mean slope over a measured leverage: of a straight table it is the constant ratio’s, of a rising one the two forces’', () => {
    const rear = (table: string) => sketchWith(['motion_ratio: 0.45', `spring_preload: 10, leverage: ${table}`], ['      front: {ext', '      rear: {extended: 600, bike: 590, rider: 570}\n      front: {ext'])
    const straight = readEntry(rear('[[0, 0], [50, 22.5], [130, 58.5]]'), 'as-found')
    near(valueOf(fittedRateOf(straight.notebook, straight.entry, 'rear')), 95 * 0.45 ** 2, 1e-6)
    // A parabola s = 0.4 z + 0.001 z² is met exactly: force 95 · (10 + s) · s′ at 10 and 30 mm.
    const rows = Array.from({ length: 14 }, (_, row) => [row * 10, 4 * row + 0.1 * row ** 2].map((mm) => Number(mm.toFixed(6))))
    const rising = readEntry(rear(JSON.stringify(rows)), 'as-found')
    const force = (z: number) => 95 * (10 + 0.4 * z + 0.001 * z ** 2) * (0.4 + 0.002 * z)
    near(valueOf(fittedRateOf(rising.notebook, rising.entry, 'rear')), (force(30) - force(10)) / 20, 1e-6)
  })

  it('is absent with its reason', () => {
    const bare = readEntry('format: 1\nentries:\n  - id: a\n')
    assert.deepEqual(missingOf(fittedRateOf(bare.notebook, bare.entry, 'front')), ['spring rate of the fork'])
    assert.deepEqual(missingOf(fittedRateOf(bare.notebook, bare.entry, 'rear')), ['spring rate of the shock', 'motion ratio, shock to wheel'])
  })
})

describe('rateComparisonOf', () => {
  it('Tern 650: 44 % above the springs is still within twice an uncertainty that rests on an assumed share', () => {
    const comparison = get(rateComparisonOf(found.notebook, found.entry, 'front'))
    near(comparison.difference.value, 44.03, 0.01)
    assert.equal(comparison.agree, true)
  })

  it('with weighed axles the same readings no longer agree', () => {
    const weighed = readEntry(sketchWith(['  geometry:', '  axle_loads: {bike: {front: 90}, rider: {front: 124}}\n  geometry:']), 'as-found')
    assert.equal(get(rateComparisonOf(weighed.notebook, weighed.entry, 'front')).agree, false)
  })
})
