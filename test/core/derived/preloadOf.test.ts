import assert from 'node:assert/strict'
import fc from 'fast-check'
import { airAt } from '../../../src/core/derived/airOf'
import { preloadOf, preloadWords } from '../../../src/core/derived/preloadOf'
import { springVerdictOf, springWantedOf } from '../../../src/core/derived/springVerdict'
import { get, missingOf, near } from '../compute/near'
import { readEntry, sketchWith, ternSketch } from './ternSketch'

const plan = (text: string, end: 'front' | 'rear' = 'front') => {
  const { notebook, entry } = readEntry(text, 'as-found')
  return preloadOf(notebook, entry, end)
}
const rearSag = (bike: number, rider: number): [string, string] => ['      front: {ext', `      rear: {extended: 600, bike: ${600 - bike}, rider: ${600 - rider}}\n      front: {ext`]
const collar = (facts: string): [string, string] => ['  fork_height: {', `  shock_preload: {on: shock, controls: preload, ${facts}}\n  fork_height: {`]

describe('preloadOf', () => {
  it('Tern 650: a rider sag of 38 mm against 25 to 35 takes 8 turns in both legs, to 8 in, and both sags fall by 8', () => {
    const preload = get(plan(ternSketch))
    assert.equal(preloadWords(preload), '8 turns in, to 8 turns in')
    assert.deepEqual(preload.plan.after, { bikeMm: 19, riderMm: 30, toppingOut: [] })
  })

  it('tells each leg its own where they stand apart', () => {
    assert.equal(preloadWords(get(plan(sketchWith(['fork_preload: 0 in', 'fork_preload: {left: 0 in, right: 2 in}'])))), 'left: 8 turns in, to 8 turns in; right: 8 turns in, to 10 turns in')
  })

  it('a leg that works alone has to take the other’s part as well', () => {
    assert.equal(preloadWords(get(plan(sketchWith(['fork_preload: {on: fork, legs: [left, right]', 'fork_preload: {on: fork, legs: [left]'], ['range: 12', 'range: 20'])))), '16 turns in, to 16 turns in')
  })

  it('counts rings the way they show, and a set length the way its higher figure goes', () => {
    const rings = sketchWith(['counts: turns, range: 12, mm_per_turn: 1', 'counts: rings, range: 12, mm_per_ring: 2'], ['fork_preload: 0 in', 'fork_preload: 6 rings'])
    assert.equal(preloadWords(get(plan(rings))), '4 rings in, to 2 rings out')
    const length = sketchWith(rearSag(8, 40), collar('counts: mm, higher_is: less, mm_per_turn: 1'), ['fork_preload: 0 in', 'fork_preload: 0 in\n      shock_preload: 160'])
    assert.equal(preloadWords(get(plan(length, 'rear'))), '−4.5 mm, to 155.5 mm')
  })

  it('stops at the range and then says that the spring is the problem', () => {
    const preload = get(plan(sketchWith(['range: 12', 'range: 2'])))
    assert.equal(preloadWords(preload), '2 turns in, to 2 turns in')
    assert.match(preload.plan.limits.join(), /too soft/)
  })

  it('says that the spring is too soft where the bike alone would come to stand on its top stop', () => {
    const preload = get(plan(sketchWith(['bike: [128, 122], rider: [118, 110]', 'bike: 147, rider: 108'], ['range: 12', 'range: 30'])))
    assert.equal(preloadWords(preload), '14 turns in, to 14 turns in')
    assert.deepEqual(preload.plan.after, { bikeMm: 0, riderMm: 30, toppingOut: ['bike'] })
    assert.match(preload.plan.limits.join(), /stand on its top stop: the spring is too soft/)
  })

  it('gives mm at the spring where the adjuster’s own count is not known, and what is wanting', () => {
    assert.equal(preloadWords(get(plan(sketchWith([', mm_per_turn: 1', ''])))), '8 mm more preload at the spring; in its own count once there is mm_per_turn of Fork preload')
    assert.equal(preloadWords(get(plan(sketchWith(rearSag(8, 20)), 'rear'))), '4.5 mm less preload at the spring')
  })

  it('an end on air is not preloaded', () => {
    assert.match(missingOf(plan(sketchWith(['fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 12, mm_per_turn: 1', 'fork_preload: {on: fork, controls: air_pressure, counts: bar']))).join(), /stands on air/)
  })

  it('property: whatever it advises, the difference of the two sags stays, unless an end tops out', () => {
    fc.assert(fc.property(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 1, max: 40 }), (bike, more) => {
      const { after } = get(plan(sketchWith(['bike: [128, 122], rider: [118, 110]', `bike: ${152 - bike}, rider: ${152 - bike - more}`]))).plan
      if (after.toppingOut.length === 0) near(after.riderMm! - after.bikeMm!, more, 1e-9)
    }), { numRuns: 40 })
  })
})

describe('springVerdictOf and springWantedOf', () => {
  const judge = (bike: number, rider: number) => {
    const { notebook, entry } = readEntry(sketchWith(rearSag(bike, rider)), 'as-found')
    return { verdict: get(springVerdictOf(notebook, entry, 'rear')).verdict, wanted: get(springWantedOf(notebook, entry, 'rear')) }
  }

  it('the two-sag rule: little bike sag with the rider right is too soft, much of it too stiff', () => {
    assert.equal(judge(2, 30).verdict, 'tooSoft')
    assert.equal(judge(8, 30).verdict, 'fits')
    assert.equal(judge(18, 30).verdict, 'tooStiff')
  })

  it('the spring wanted just reaches the window of the bike’s sag: 9.80665 · 84 · 0.6 / (30 − 5) at the wheel, over 0.45²', () => {
    const { wanted } = judge(2, 30)
    near(wanted.rate.value, (9.80665 * 84 * 0.6) / 25 / 0.45 ** 2, 1e-9)
    assert.deepEqual(wanted.sold, { below: 95, above: 100, nearest: 100 })
  })

  it('two loads on a linear spring: the preload that goes with it brings the bike alone to its own sag', () => {
    // 88.5 − 20 kg on the springs, rate 9.80665 · 84 · 0.6 / (30 − 5) at the wheel: W / k − 5 mm there, times 0.45.
    const loaded: [string, string][] = [['  geometry:', '  axle_loads: {bike: {rear: 88.5}}\n  geometry:'], ['spring_rate: 95,', 'spring_rate: 95, unsprung_mass: 20,']]
    const { notebook, entry } = readEntry(sketchWith(rearSag(2, 30), ...loaded), 'as-found')
    const wheelRate = (9.80665 * 84 * 0.6) / 25
    near(get(get(springWantedOf(notebook, entry, 'rear')).preload).value, ((9.80665 * 68.5) / wheelRate - 5) * 0.45, 1e-9)
    assert.match(missingOf(judge(2, 30).wanted.preload).join(), /weight on this axle/)
  })

  it('leaves to the springs of a fork what its air does not do', () => {
    const air = 'spring_rate: 9.5, spring_preload: 10, air: {seal_diameter: 43, bore: 38, oil_level: 120, spring_volume: 40}}'
    const soft: [string, string] = ['bike: [128, 122], rider: [118, 110]', 'bike: [151, 145], rider: [122, 114]']
    const rates = [sketchWith(soft), sketchWith(soft, ['spring_rate: 9.5}', air])].map((text) => {
      const { notebook, entry } = readEntry(text, 'as-found')
      return { notebook, entry, wanted: get(springWantedOf(notebook, entry, 'front')) }
    })
    const { notebook, entry } = rates[1]!
    const force = (mm: number) => get(airAt(notebook, entry, 'force', { mm, stroke: 'slow' })).value
    // Sags of 15 and 34 mm: the nearest places of both windows.
    near(rates[0]!.wanted.rate.value - rates[1]!.wanted.rate.value, (force(34) - force(15)) / 19, 1e-6)
    assert.ok(rates[1]!.wanted.rate.working.assumptions.includes('what the air above the oil carries is taken off'))
  })
})
