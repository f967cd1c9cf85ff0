import assert from 'node:assert/strict'
import fc from 'fast-check'
import { solveSteering, type SteeringSet } from '../../../../src/core/compute/geometry/solveSteering'
import type { SteeringKey } from '../../../../src/core/compute/geometry/steeringRecipes'
import { normalTrailOf, trailOf } from '../../../../src/core/compute/geometry/trail'
import { get, missingOf, near } from '../near'

const keys: SteeringKey[] = ['rakeDeg', 'offsetMm', 'frontRadiusMm', 'trailMm', 'normalTrailMm']
const machine = (rakeDeg: number, offsetMm: number, frontRadiusMm: number): Record<SteeringKey, number> => ({
  rakeDeg, offsetMm, frontRadiusMm, trailMm: trailOf(rakeDeg, offsetMm, frontRadiusMm), normalTrailMm: normalTrailOf(rakeDeg, offsetMm, frontRadiusMm),
})

const triples = keys.flatMap((a, i) => keys.slice(i + 1).flatMap((b, j) => keys.slice(i + j + 2).map((c) => [a, b, c] as const)))

describe('solveSteering', () => {
  it('Meijaard et al. 2007 benchmark bicycle: offset from trail and trail from offset, round', () => {
    const offset = get(solveSteering({ rakeDeg: 18, frontRadiusMm: 350, trailMm: 80 })).values.offsetMm.value
    near(offset, 32.0714267, 1e-6)
    near(get(solveSteering({ rakeDeg: 18, frontRadiusMm: 350, offsetMm: offset })).values.trailMm.value, 80, 1e-12)
  })

  it('IFToMM benchmark, uncontrolled bicycle: the point P2 lies on the steering axis, 0.9 m up from the ground', () => {
    const lambda = Math.PI / 10
    const [w, c] = [1.02, 0.08]
    const [px, pz] = [0.82188470506 - (w + c), 0.85595086466]
    near(px * Math.cos(lambda) + pz * Math.sin(lambda), 0, 1e-9)
    near(-px * Math.sin(lambda) + pz * Math.cos(lambda), 0.9, 1e-9)
    const { values } = get(solveSteering({ rakeDeg: 18, frontRadiusMm: 350, trailMm: c * 1000 }))
    // The front axle stands R above its contact; the axis passes it at the offset that was solved for.
    near((w - (w + c)) * Math.cos(lambda) + 0.35 * Math.sin(lambda), values.offsetMm.value / 1000, 1e-12)
  })

  for (const triple of triples.filter((three) => three.join() !== 'rakeDeg,trailMm,normalTrailMm')) {
    it(`finds the other two from ${triple.join(', ')}`, () => {
      const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
      fc.assert(fc.property(number(18, 35), number(5, 60), number(270, 340), (rake, offset, radius) => {
        const whole = machine(rake, offset, radius)
        fc.pre(whole.normalTrailMm > 10)
        const { values, contradiction } = get(solveSteering(Object.fromEntries(triple.map((key) => [key, whole[key]]))))
        for (const key of keys) near(values[key].value, whole[key], 1e-6, key)
        return contradiction === undefined
      }))
    })
  }

  it('cannot tell offset and tyre from rake and both trails, and asks for one of them', () => {
    const { rakeDeg, trailMm, normalTrailMm } = machine(24, 30, 300)
    assert.deepEqual(missingOf(solveSteering({ rakeDeg, trailMm, normalTrailMm })), ['one more of offset of the axle from the steering axis, front tyre radius'])
  })

  it('asks for what would complete the set', () => {
    assert.deepEqual(missingOf(solveSteering({ rakeDeg: 24, offsetMm: 30 })), ['front tyre radius, or the trail'])
    assert.deepEqual(missingOf(solveSteering({ rakeDeg: 24, trailMm: 100 })), ['one more of offset of the axle from the steering axis, front tyre radius'])
    assert.deepEqual(missingOf(solveSteering({ offsetMm: 30 })), ['rake', 'front tyre radius'])
    assert.deepEqual(missingOf(solveSteering({})), ['rake', 'offset of the axle from the steering axis', 'front tyre radius'])
  })

  it('reports a written trail that the rest contradicts, with the amount, and leaves it as written', () => {
    const { values, contradiction } = get(solveSteering({ rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300, trailMm: 104 }))
    assert.equal(contradiction?.of, 'trailMm')
    near(contradiction!.computed, 100.7295, 1e-4)
    near(contradiction!.by, 3.2705, 1e-4)
    assert.equal(values.trailMm.value, 104)
  })

  it('reports a normal trail as well, and two trails that cannot both be', () => {
    assert.equal(get(solveSteering({ rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300, normalTrailMm: 95 })).contradiction?.of, 'normalTrailMm')
    assert.equal(get(solveSteering({ rakeDeg: 24, offsetMm: 30, trailMm: 100, normalTrailMm: 80 })).contradiction?.of, 'trailMm')
  })

  it('lets a trail pass that differs by what manuals round to, or by its uncertainty', () => {
    const base = { rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300 } satisfies SteeringSet
    assert.equal(get(solveSteering({ ...base, trailMm: 101 })).contradiction, undefined)
    assert.equal(get(solveSteering({ ...base, trailMm: { value: 104, u: 2 } })).contradiction, undefined)
  })

  it('carries uncertainties into what it finds and leaves written ones alone', () => {
    const { values } = get(solveSteering({ rakeDeg: { value: 18.9, u: 0.2 }, offsetMm: { value: 38.5, u: 1 }, frontRadiusMm: 330.178297654 }))
    near(values.trailMm.u, 1.63, 0.005)
    near(values.rakeDeg.u, 0.2, 1e-12)
    assert.equal(values.offsetMm.working.source, 'as written')
  })

  it('has a reason, and no NaN, for numbers that no machine can have', () => {
    assert.match(missingOf(solveSteering({ offsetMm: 30, trailMm: 80, normalTrailMm: 90 })).join(), /has an answer/)
  })
})
