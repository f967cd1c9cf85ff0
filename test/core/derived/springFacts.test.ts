import assert from 'node:assert/strict'
import { airSpring } from '../../../src/core/compute/springs/airSpring'
import { airAt, forkAirOf } from '../../../src/core/derived/airOf'
import { dampedFrequencyOf, naturalFrequencyOf } from '../../../src/core/derived/bounceOf'
import { rateFromCoil } from '../../../src/core/derived/coilOf'
import { endForceOf, totalForce } from '../../../src/core/derived/endForce'
import { leverageProgressOf, rateAtRiderSagOf } from '../../../src/core/derived/leverageRows'
import { preloadForceOf } from '../../../src/core/derived/preloadForceOf'
import { forkSpringsOf, shockSpringOf } from '../../../src/core/derived/springsFitted'
import { stackChangeOf, stackRatesOf } from '../../../src/core/derived/stackOf'
import { fittedRateOf } from '../../../src/core/derived/wheelRateOf'
import { get, missingOf, near, nearRelative, valueOf } from '../compute/near'
import { readEntry, sketchWith } from './ternSketch'

const noRate: [string, string] = ['spring_rate: 9.5}', 'spring_preload: 10}']
const front = (facts: string, ...more: [string, string][]) => readEntry(sketchWith(['spring_rate: 9.5}', `${facts}}`], ...more), 'as-found')
const cos = Math.cos((24 * Math.PI) / 180)
const air = 'air: {seal_diameter: 43, bore: 38, oil_level: 120, spring_volume: 40}'
const rearSag: [string, string] = ['      front: {ext', '      rear: {extended: 600, bike: 590, rider: 570}\n      front: {ext']

describe('a spring by its wire', () => {
  const wire = 'spring: {wire: 3, outer_diameter: 33, active_coils: 10, shear_modulus: 80}'

  it('strength-of-materials textbook, problem 8.8: 3 mm wire on 30 mm, ten coils, 80 GPa is 3 N/mm, and counts as fitted', () => {
    const { notebook, entry } = front(wire)
    near(valueOf(rateFromCoil(notebook, 'front')), 3, 1e-12)
    assert.deepEqual(forkSpringsOf(notebook, entry), { left: get(rateFromCoil(notebook, 'front')).value, right: get(rateFromCoil(notebook, 'front')).value })
    const fitted = get(fittedRateOf(notebook, entry, 'front'))
    near(fitted.value, 6 / cos, 1e-9)
    assert.ok(fitted.u! > 0, 'the calliper’s uncertainty goes on')
  })

  it('a rate that is noted comes first, and an adjuster before both', () => {
    const noted = front(`spring_rate: 9.5, ${wire}`)
    assert.deepEqual(forkSpringsOf(noted.notebook, noted.entry), { left: 9.5, right: 9.5 })
    const adjuster: [string, string] = ['entries:', '  fork_springs: {on: fork, controls: spring_rate, counts: kgf/mm}\nentries:']
    const fitted = front(`spring_rate: 9.5, ${wire}`, adjuster, ['fork_height: 5', 'fork_height: 5\n      fork_springs: 1'])
    assert.deepEqual(forkSpringsOf(fitted.notebook, fitted.entry), { left: 9.80665, right: 9.80665 })
  })

  it('an adjuster without legs speaks of the leg alone that has a spring', () => {
    const one = front('spring_rate: {right: 19}', ['entries:', '  springs: {on: fork, controls: spring_rate, counts: N/mm}\nentries:'], ['fork_height: 5', 'fork_height: 5\n      springs: 20'])
    assert.deepEqual(forkSpringsOf(one.notebook, one.entry), { right: 20 })
  })

  it('serves the rear as well, once for each of twin shocks', () => {
    const { notebook, entry } = readEntry(sketchWith(['spring_rate: 95, ', `${wire}, springs: 2, `]))
    near(shockSpringOf(notebook, entry).rateNPerMm, 3, 1e-12)
    near(valueOf(fittedRateOf(notebook, entry, 'rear')), 2 * 3 * 0.45 ** 2, 1e-9)
  })

  it('is absent with its reason', () => {
    const { notebook } = front('spring: {wire: 3}')
    assert.deepEqual(missingOf(rateFromCoil(notebook, 'front')), ['outer diameter of the spring', 'active coils of the spring'])
  })
})

describe('a dual-rate stack', () => {
  const stack = 'spring_preload: 10, stack: {soft_rate: 8, stiff_rate: 12, soft_travel: 24}'

  it('autorepairmagz.com: 8 on 12 N/mm is 4.8 and then 12, and changes at 24 · (1 + 8/12) − 10 mm of fork travel', () => {
    const { notebook, entry } = front(stack)
    near(valueOf(stackRatesOf(notebook, 'front').first), 4.8, 1e-12)
    near(valueOf(stackRatesOf(notebook, 'front').second), 12, 1e-12)
    near(valueOf(stackChangeOf(notebook, entry, 'front')), 30, 1e-9)
  })

  it('turning preload in brings the change nearer', () => {
    const { notebook, entry } = front(stack, ['fork_preload: 0 in', 'fork_preload: 4 in'])
    near(valueOf(stackChangeOf(notebook, entry, 'front')), 26, 1e-9)
  })

  it('by hand: from 27 to 38 mm of sag it is 4.8 for 3 mm and 12 for 8, in both legs, over the cosine of the rake', () => {
    const { notebook, entry } = front(stack)
    near(valueOf(fittedRateOf(notebook, entry, 'front')), (2 * (3 * 4.8 + 8 * 12)) / 11 / cos, 1e-9)
  })

  it('at the rear by the motion ratio: change and mean rate', () => {
    const { notebook, entry } = readEntry(sketchWith(['spring_rate: 95, ', 'spring_preload: 5, stack: {soft_rate: 100, stiff_rate: 100, soft_travel: 5}, '], rearSag), 'as-found')
    near(valueOf(stackChangeOf(notebook, entry, 'rear')), 5 / 0.45, 1e-9)
    // 10 to 30 mm at the wheel, the change at 11.11.
    const force = (z: number) => (z < 5 / 0.45 ? 50 * (5 + 0.45 * z) : 500 + 100 * (0.45 * z - 5)) * 0.45
    near(valueOf(fittedRateOf(notebook, entry, 'rear')), (force(30) - force(10)) / 20, 1e-9)
  })

  it('says what is missing: the preload, without which nobody knows where it changes', () => {
    const { notebook, entry } = front('stack: {soft_rate: 8, stiff_rate: 12, soft_travel: 24}')
    assert.deepEqual(missingOf(stackChangeOf(notebook, entry, 'front')), ['the spring’s preload as fitted (`spring_preload`)'])
    assert.deepEqual(missingOf(fittedRateOf(notebook, entry, 'front')), ['the spring’s preload as fitted (`spring_preload`)'])
    const half = front('spring_preload: 10, stack: {soft_rate: 8}')
    assert.deepEqual(missingOf(fittedRateOf(half.notebook, half.entry, 'front')), ['travel of the soft spring', 'rate of the stiff spring'])
  })
})

describe('the air above the oil', () => {
  const both = `spring_rate: 9.5, spring_preload: 10, ${air}`
  const leg = { sealDiameterMm: 43, boreMm: 38, oilLevelMm: 120, travelMm: 120, springVolumeMl: 40, exponent: 1 }

  it('the notebook’s facts are those of the spring that Moran & Shapiro’s gas makes', () => {
    const { notebook, entry } = front(both)
    near(valueOf(airAt(notebook, entry, 'force', { mm: 38, stroke: 'slow' })), get(airSpring(leg)).at(38).forceN, 1e-9)
    near(valueOf(airAt(notebook, entry, 'rate', { mm: 120, stroke: 'fast' })), get(airSpring({ ...leg, exponent: 1.2 })).at(120).rateNPerMm, 1e-9)
  })

  it('adds to the rate that both sags see, slowly read: its own mean slope in both legs', () => {
    const { notebook, entry } = front(both)
    const at = get(airSpring(leg)).at
    near(valueOf(fittedRateOf(notebook, entry, 'front')), (19 + (2 * (at(38).forceN - at(27).forceN)) / 11) / cos, 1e-6)
    const one = front(both.replace('spring_volume: 40', 'spring_volume: 40, legs: 1'))
    near(valueOf(fittedRateOf(one.notebook, one.entry, 'front')), (19 + (at(38).forceN - at(27).forceN) / 11) / cos, 1e-6)
  })

  it('a fork that stands on air alone has a rate too', () => {
    const { notebook, entry } = front(air.replace('spring_volume: 40', 'pressure: 9 bar, legs: 1'))
    const at = get(airSpring({ ...leg, springVolumeMl: 0, gaugeBar: 9 })).at
    near(valueOf(fittedRateOf(notebook, entry, 'front')), (at(38).forceN - at(27).forceN) / 11 / cos, 1e-6)
  })

  it('goes by the adjusters for pressure and oil level where there are some, and by the altitude of the day', () => {
    const adjusters: [string, string] = ['entries:', '  air: {on: fork, legs: [left, right], controls: air_pressure, counts: psi}\n  oil: {on: fork, legs: [left, right], controls: oil_level, counts: mm}\nentries:']
    const { notebook, entry } = front(both, adjusters, ['fork_height: 5', 'fork_height: 5\n      air: 14.503773773\n      oil: {left: 110, right: 112}'], ['    sag:\n', '    conditions: {altitude: 2000 m}\n    sag:\n'])
    const { leg: now, assumptions } = get(forkAirOf(notebook, entry))
    near(now.gaugeBar, 1, 1e-9)
    near(now.oilLevelMm, 111, 1e-12)
    near(now.atmosphereBar, 0.794944, 1e-5)
    assert.deepEqual(assumptions, ['air pressure of the standard atmosphere at 2000 m'])
  })

  it('says what is missing, and never gives zero for it', () => {
    const { notebook, entry } = front('spring_rate: 9.5, air: {bore: 38}')
    assert.deepEqual(missingOf(fittedRateOf(notebook, entry, 'front')), ['the spring’s preload as fitted (`spring_preload`)'])
    assert.deepEqual(missingOf(airAt(notebook, entry, 'force', { mm: 10, stroke: 'slow' })), ['seal diameter of the fork', 'oil level of the fork in mm'])
    const full = front(both.replace('oil_level: 120', 'oil_level: 20'))
    assert.match(missingOf(fittedRateOf(full.notebook, full.entry, 'front')).join(), /^room for the air/)
  })

  it('counts in the frequency of the front', () => {
    const loaded: [string, string][] = [['  geometry:', '  axle_loads: {bike: {front: 90}}\n  geometry:']]
    const { notebook, entry } = front(`${both}, unsprung_mass: 15`, ...loaded)
    const vertical = valueOf(fittedRateOf(notebook, entry, 'front')) / cos
    near(valueOf(naturalFrequencyOf(notebook, entry, 'front')), Math.sqrt((1000 * vertical) / 75) / (2 * Math.PI), 1e-9)
    assert.ok(missingOf(dampedFrequencyOf(notebook, entry, 'front')).length > 0)
  })
})

describe('endForceOf', () => {
  it('by hand: springs and preload in both legs, and at the wheel by the ratio', () => {
    const { notebook, entry } = readEntry(sketchWith(noRate, ['spring_preload: 10}', 'spring_preload: 10, spring_rate: {left: 9, right: 10}}'], ['spring_rate: 95,', 'spring_rate: 95, spring_preload: 8,']), 'as-found')
    near(totalForce(get(endForceOf(notebook, entry, 'front')), 30), 19 * 40, 1e-9)
    near(totalForce(get(endForceOf(notebook, entry, 'rear')), 40), 95 * (8 + 18) * 0.45, 1e-9)
  })

  it('knows no force past the end of a measured leverage', () => {
    const { notebook, entry } = readEntry(sketchWith(['motion_ratio: 0.45', 'spring_preload: 8, leverage: [[0, 0], [50, 20], [100, 42]]']), 'as-found')
    const force = get(endForceOf(notebook, entry, 'rear'))
    assert.ok(totalForce(force, 100)! > 0)
    assert.equal(totalForce(force, 101), undefined)
  })
})

describe('preloadForceOf', () => {
  it('linear spring: 9.5 N/mm preloaded by 10 mm and 4 turns of 1 mm is 133 N', () => {
    const { notebook, entry } = front('spring_rate: 9.5, spring_preload: 10', ['fork_preload: 0 in', 'fork_preload: 4 in'])
    near(valueOf(preloadForceOf(notebook, entry, 'front')), 133, 1e-9)
    assert.deepEqual(missingOf(preloadForceOf(notebook, entry, 'rear')), ['the spring’s preload as fitted (`spring_preload`)'])
  })
})

describe('a measured leverage', () => {
  // s = 0.4 z + 0.001 z² in steps of 10 mm.
  const rows = JSON.stringify(Array.from({ length: 14 }, (_, row) => [row * 10, 4 * row + 0.1 * row ** 2].map((mm) => Number(mm.toFixed(6)))))
  const read = readEntry(sketchWith(['motion_ratio: 0.45', `spring_preload: 10, leverage: ${rows}`], rearSag), 'as-found')

  it('derivative of the force by hand: k·s′² + k·(p + s)·s″ at the rider’s sag, both terms', () => {
    const [k, p, z] = [95, 10, 30]
    const exact = k * (0.4 + 0.002 * z) ** 2 + k * (p + 0.4 * z + 0.001 * z ** 2) * 0.002
    nearRelative(valueOf(rateAtRiderSagOf(read.notebook, read.entry)), exact, 0.002)
    assert.ok(exact > 1.2 * k * (0.4 + 0.002 * z) ** 2, 'the second term is worth having')
  })

  it('progressivity: from 0.4 to 0.66 over 130 mm', () => {
    nearRelative(valueOf(leverageProgressOf(read.notebook)), (100 * 0.26) / 0.4, 0.03)
  })
})
