import assert from 'node:assert/strict'
import { standardAtmosphere } from '../../../../src/core/compute/pressure/standardAtmosphere'
import { near, nearRelative } from '../near'

const pascal = (altitudeM: number) => standardAtmosphere(altitudeM)! * 1e5

describe('standardAtmosphere', () => {
  const table = [[0, 101325, 101325], [500, 95460.6, 95460.8], [1000, 89874.1, 89874.6], [1500, 84555.4, 84556], [2000, 79494.4, 79495.2], [3000, 70107.5, 70108.5]] as const
  for (const [altitude, formula, barometric] of table) {
    it(`US Standard Atmosphere 1976: ${formula} Pa at ${altitude} m`, () => {
      near(pascal(altitude), formula, 0.06)
      nearRelative(pascal(altitude), barometric, 5e-5)
    })
  }

  it('engineersedge table: 69692.2 Pa at 3048 m, from a rounded 10.108 psi', () => {
    nearRelative(pascal(3048), 69692.2, 2e-4)
    near(pascal(3048), 69680.6, 0.06)
  })

  it('holds up to the ends of its range', () => assert.ok(standardAtmosphere(11_000)! < 0.23 && standardAtmosphere(-500)! > 1.07))

  it('is undefined where the formula does not hold', () => {
    assert.deepEqual([standardAtmosphere(12_000), standardAtmosphere(-600), standardAtmosphere(NaN)], [undefined, undefined, undefined])
  })
})
