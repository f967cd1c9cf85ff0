import assert from 'node:assert/strict'
import { geometryNow, type GeometryFacts } from '../../../../src/core/compute/geometry/geometryNow'
import { formulaWithNumbers } from '../../../../src/core/compute/working/formulaWithNumbers'
import { seededNormal } from '../working/seededNormal'
import { attitude } from '../../../../src/core/compute/geometry/attitude'
import { get, missingOf, near, nearRelative } from '../near'

const facts: GeometryFacts = { rakeDeg: 24, offsetMm: 30, wheelbaseMm: 1400, frontRadiusMm: 300, rearRadiusMm: 310 }

describe('geometryNow', () => {
  it('gives rake, trail, normal trail and wheelbase as figured when nothing moved', () => {
    const now = get(geometryNow(facts))
    near(now.rakeDeg.value, 24, 1e-12)
    near(now.trailMm.value, 100.7295, 1e-4)
    near(now.normalTrailMm.value, 92.021, 1e-3)
    near(now.wheelbaseMm.value, 1400, 1e-9)
  })

  it('adds fork height to front sag, and takes what the rear was raised from its sag', () => {
    const now = get(geometryNow({ ...facts, moved: { forkUpMm: 5, frontSagMm: 33, rearSagMm: 41, rearRaisedMm: 8 } }))
    near(now.trailMm.value, 100.3026392489, 1e-8)
    near(now.wheelbaseMm.value, 1384.5326845623, 1e-8)
  })

  it('takes other tyres', () => {
    const now = get(geometryNow({ ...facts, moved: { forkUpMm: 5, rearSagMm: 10, frontRadiusMm: 296, rearRadiusMm: 318 } }))
    near(now.rakeDeg.value, 23.7308131154, 1e-9)
  })

  it('shows a working whose numbers stand in the formula', () => {
    const { wheelbaseMm } = get(geometryNow({ ...facts, moved: { forkUpMm: 5 } }))
    assert.match(formulaWithNumbers(wheelbaseMm.working), /x = 1400 − \(5 \+ 0\) · sin 24/)
  })

  it('agrees with a seeded Monte Carlo run (JCGM 101), a tyre that did not change moving as one number', () => {
    const normal = seededNormal(42)
    const draws = Array.from({ length: 20_000 }, () => attitude(
      { rakeDeg: 24 + 0.2 * normal(), offsetMm: 30 + normal(), wheelbaseMm: 1400, frontRadiusMm: 300 + 2 * normal(), rearRadiusMm: 310 },
      { frontShorterMm: 38 + 0.6 * normal(), rearSunkMm: 33 },
    ).trailMm)
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
    const spread = Math.sqrt(draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / (draws.length - 1))
    const now = get(geometryNow({
      ...facts, rakeDeg: { value: 24, u: 0.2 }, offsetMm: { value: 30, u: 1 }, frontRadiusMm: { value: 300, u: 2 },
      moved: { frontSagMm: { value: 38, u: 0.6 }, rearSagMm: 33 },
    }))
    nearRelative(now.trailMm.u, spread, 0.02)
  })

  it('names what is missing, each once', () => {
    assert.deepEqual(missingOf(geometryNow({ ...facts, rakeDeg: undefined, frontRadiusMm: undefined })), ['rake of the figures', 'front tyre radius of the figures'])
  })

  it('has a reason, and no NaN, where no machine can stand', () => {
    assert.ok(missingOf(geometryNow({ ...facts, wheelbaseMm: 1, moved: { rearRadiusMm: 900 } })).length > 0)
    assert.deepEqual(missingOf(geometryNow({ ...facts, wheelbaseMm: 0 })), ['a wheelbase and tyre radii above zero'])
  })
})
