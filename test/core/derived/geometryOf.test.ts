import assert from 'node:assert/strict'
import fc from 'fast-check'
import { geometryChange, geometryOf, geometryKeys, solvedSteeringOf } from '../../../src/core/derived/geometryOf'
import { get, missingOf, near, valueOf } from '../compute/near'
import { readEntry, sketchWith, ternSketch } from './ternSketch'

const radians = Math.PI / 180
const numbers = (text: string, key?: string, stance: 'figures' | 'riderSag' = 'figures') => {
  const { notebook, entry } = readEntry(text, key)
  return Object.fromEntries(geometryKeys.map((name) => [name, valueOf(geometryOf(notebook, entry, stance)[name])])) as Record<(typeof geometryKeys)[number], number>
}

/** Where both axles are, and the direction of the steering axis, turned until both tyres touch: by bisection, not by the formula. */
function byBisection(forkUp: number, rearSunk: number) {
  const front = { x: 1400 - forkUp * Math.sin(24 * radians), y: 300 + forkUp * Math.cos(24 * radians) }
  const rear = { x: 0, y: 315 + rearSunk }
  const heights = (turn: number) => (front.x - rear.x) * Math.sin(turn) + (front.y - rear.y) * Math.cos(turn) - (300 - 315)
  let [low, high] = [-0.3, 0.3]
  for (let halving = 0; halving < 80; halving++) {
    const middle = (low + high) / 2
    if (heights(middle) < 0) low = middle
    else high = middle
  }
  const rake = 24 * radians + low
  return { rakeDeg: rake / radians, trailMm: (300 * Math.sin(rake) - 30) / Math.cos(rake), wheelbaseMm: (front.x - rear.x) * Math.cos(low) - (front.y - rear.y) * Math.sin(low) }
}

describe('geometryOf', () => {
  it('plane trigonometry by hand: rake 24°, offset 30, radius 300 give trail 100.73 and normal trail 92.02', () => {
    const { rakeDeg, trailMm, normalTrailMm, wheelbaseMm } = numbers(ternSketch, 'as-found')
    near(rakeDeg, 24, 1e-9)
    near(normalTrailMm, 92.02099, 1e-4)
    near(trailMm, 92.02099 / 0.9135455, 1e-3)
    near(wheelbaseMm, 1400, 1e-9)
  })

  it('follows the fork height from where it was first recorded, and says so', () => {
    const text = sketchWith(['{fork_rebound: 3 out}', '{fork_height: 15}'])
    const expected = byBisection(10, 0)
    const actual = numbers(text, 'run-1')
    near(actual.rakeDeg, expected.rakeDeg, 1e-7)
    near(actual.trailMm, expected.trailMm, 1e-6)
    near(actual.wheelbaseMm, expected.wheelbaseMm, 1e-6)
    const { notebook, entry } = readEntry(text, 'run-1')
    assert.ok(get(geometryOf(notebook, entry).trailMm).working.assumptions.includes('the geometry figures hold for Fork height at 5 mm, as first recorded in as-found'))
  })

  it('takes lines by their spacing, and says what is missing where there is none', () => {
    const lines = sketchWith(['controls: fork_height, counts: mm', 'controls: fork_height, counts: lines, mm_per_ring: 2'], ['{fork_rebound: 3 out}', '{fork_height: 10}'])
    near(numbers(lines).rakeDeg, byBisection(10, 0).rakeDeg, 1e-7)
    const { notebook, entry } = readEntry(lines.replace(', mm_per_ring: 2', ''))
    assert.match(missingOf(geometryOf(notebook, entry).rakeDeg).join(), /^mm_per_ring of Fork height/)
  })

  it('raises the rear by a longer shock over the motion ratio', () => {
    const text = sketchWith(['  fork_height: {', '  ride_height: {on: shock, controls: ride_height, counts: mm}\n  fork_height: {'], ['      fork_height: 5', '      fork_height: 5\n      ride_height: 0'], ['{fork_rebound: 3 out}', '{ride_height: 4.5}'])
    near(numbers(text).rakeDeg, byBisection(0, -10).rakeDeg, 1e-7)
  })

  it('sinks both ends by the rider sag of the entry, and needs both', () => {
    const both = sketchWith(['      front: {ext', '      rear: {extended: 600, bike: 592, rider: 570}\n      front: {ext'])
    near(numbers(both, 'as-found', 'riderSag').trailMm, byBisection(38, 30).trailMm, 1e-6)
    const { notebook, entry } = readEntry(ternSketch, 'as-found')
    assert.deepEqual(missingOf(geometryOf(notebook, entry, 'riderSag').trailMm), ['the rider sag of both ends, measured in this entry'])
  })

  it('keeps tyres that came on for the entries that come from there', () => {
    const text = `${sketchWith(['{fork_rebound: 3 out}', '{}\n    tyres: {front_radius: 295}'])}  - id: run-2\n    settings: {fork_rebound: 4}\n`
    const rake = 24 * radians + Math.asin((295 - 315) / Math.hypot(1400, 15)) - Math.atan2(300 - 315, 1400)
    near(numbers(text, 'run-2').rakeDeg, rake / radians, 1e-9)
    near(numbers(text, 'as-found').rakeDeg, 24, 1e-9)
  })

  it('gives figures that would not do for a computation as they are written, until something moves', () => {
    const text = sketchWith(['{rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}', '{rake: 26, trail: 106, wheelbase: 1485}'], ['{fork_rebound: 3 out}', '{fork_height: 7}'])
    const written = numbers(text, 'as-found')
    assert.deepEqual([written.rakeDeg, written.trailMm, written.wheelbaseMm], [26, 106, 1485])
    near(written.normalTrailMm, 106 * Math.cos(26 * radians), 1e-9)
    const { notebook, entry } = readEntry(text, 'run-1')
    assert.deepEqual(missingOf(geometryOf(notebook, entry).trailMm), ['one more of offset of the axle from the steering axis, front tyre radius', 'rear tyre radius of the figures'])
  })

  it('is absent with its reason where nothing is known, and never a number out of nothing', () => {
    const { notebook, entry } = readEntry('format: 1\nentries:\n  - id: a\n')
    for (const key of geometryKeys) assert.ok(missingOf(geometryOf(notebook, entry)[key]).length > 0)
  })

  it('property: tubes further up through the clamps are always less rake and trail; more offset is less trail', () => {
    const at = (up: number, offset = 30) => numbers(sketchWith(['fork_offset: 30', `fork_offset: ${offset}`], ['{fork_rebound: 3 out}', `{fork_height: ${up}}`]))
    fc.assert(fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 20 }), (up, more) => {
      const [before, after] = [at(up), at(up + more)]
      assert.ok(after.rakeDeg < before.rakeDeg && after.trailMm < before.trailMm && after.wheelbaseMm < before.wheelbaseMm)
      assert.ok(at(up, 30 + more).trailMm < before.trailMm)
    }), { numRuns: 20 })
  })
})

describe('geometryChange', () => {
  it('is the difference of both states, zero where nothing moved', () => {
    const text = sketchWith(['{fork_rebound: 3 out}', '{fork_height: 15}'])
    const { notebook, entry } = readEntry(text, 'run-1')
    near(valueOf(geometryChange(notebook, entry, notebook.entries[0]!, 'trailMm')), byBisection(10, 0).trailMm - byBisection(0, 0).trailMm, 1e-6)
    near(valueOf(geometryChange(notebook, notebook.entries[0]!, notebook.entries[0]!, 'rakeDeg')), 0, 0)
  })
})

describe('solvedSteeringOf', () => {
  it('reports a written trail that the rest contradicts', () => {
    const { notebook } = readEntry(sketchWith(['rake: 24,', 'rake: 24, trail: 98,']))
    const { contradiction } = get(solvedSteeringOf(notebook))
    near(contradiction?.by, 98 - 100.7295, 1e-3)
  })
})
