import assert from 'node:assert/strict'
import { wheelRateTableUncertainty } from '../../../../src/core/compute/leverage/tableUncertainty'
import type { Point } from '../../../../src/core/compute/leverage/monotoneCurve'
import { wheelSpring } from '../../../../src/core/compute/leverage/wheelRate'
import { seededNormal } from '../working/seededNormal'
import { get, nearRelative } from '../near'

const table: Point[] = [0, 26, 52, 78, 104, 130].map((z) => [z, 0.42 * z + 0.00045 * z * z])
const facts = { springRateNPerMm: 95, preloadMm: 10, leverage: { table }, wheelMm: 65 }

describe('wheelRateTableUncertainty', () => {
  it('agrees with a seeded Monte Carlo run over the rows (JCGM 101)', () => {
    const normal = seededNormal(7)
    const u = 0.1
    const draws = Array.from({ length: 1500 }, () =>
      get(wheelSpring({ ...facts, leverage: { table: table.map(([wheel, shock]): Point => [wheel, shock + u * normal()]) } })).rate.value)
    const mean = draws.reduce((sum, draw) => sum + draw, 0) / draws.length
    nearRelative(wheelRateTableUncertainty(facts, u), Math.sqrt(draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / (draws.length - 1)), 0.1)
  })

  it('grows as the rows move together, for the same readings', () => {
    const close = table.map(([wheel]): Point => [wheel / 2 + 32.5, 0.42 * (wheel / 2 + 32.5) + 0.00045 * (wheel / 2 + 32.5) ** 2])
    const fromStart = { ...facts, leverage: { table: close }, wheelMm: 32.5 }
    assert.ok(wheelRateTableUncertainty(fromStart, 0.1)! > 1.5 * wheelRateTableUncertainty(facts, 0.1)!)
  })

  it('is undefined where there is no rate', () => {
    assert.equal(wheelRateTableUncertainty({ ...facts, wheelMm: 200 }, 0.1), undefined)
  })
})
