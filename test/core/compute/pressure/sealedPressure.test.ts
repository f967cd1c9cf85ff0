import assert from 'node:assert/strict'
import fc from 'fast-check'
import { coldPressureFor, sealedPressure, toAbsolute, toGauge } from '../../../../src/core/compute/pressure/sealedPressure'
import { standardAtmosphere } from '../../../../src/core/compute/pressure/standardAtmosphere'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

const psi = 0.0689475729317
const celsius = (fahrenheit: number) => ((fahrenheit - 32) * 5) / 9

describe('sealedPressure', () => {
  it('assignmentexpert 1507: 658 kPa gauge from 20 to 60 °C at 101.3 kPa is 761.66 kPa', () => {
    const kilopascal = 100 * valueOf(sealedPressure({ gaugeBar: 6.58, fromC: 20, toC: 60, fromAtmosphereBar: 1.013 }))
    near(kilopascal, 761.66, 0.1)
    near(kilopascal, 761.6057, 1e-3)
  })

  for (const [fahrenheit, printed, exact] of [[50, 18.7, 18.6899], [130, 23.9, 23.9303]] as const) {
    it(`team.net, tyre pressure: 20 psi at 70 °F is ${printed} psi at ${fahrenheit} °F`, () => {
      const result = valueOf(sealedPressure({ gaugeBar: 20 * psi, fromC: celsius(70), toC: celsius(fahrenheit), fromAtmosphereBar: 14.696 * psi })) / psi
      near(result, printed, 0.05)
      near(result, exact, 1e-3)
    })
  }

  it('trap, hlsn: 30 psi from 11 to 54 °C is 36.76378 psi; 34.54 by the gauge figure must not pass', () => {
    const result = valueOf(sealedPressure({ gaugeBar: 30 * psi, fromC: 11, toC: 54, fromAtmosphereBar: 14.696 * psi })) / psi
    near(result, 36.76378, 1e-4)
    assert.ok(Math.abs(result - 34.54) > 2)
  })

  it('US Standard Atmosphere 1976: a chamber at zero gauge, taken from the sea to 2000 m, reads +21.83 kPa', () => {
    const result = 100 * valueOf(sealedPressure({ gaugeBar: 0, fromC: 20, toC: 20, toAtmosphereBar: standardAtmosphere(2000) }))
    near(result, 21.83, 0.01)
    near(result / 6.89475729317, 3.166, 1e-3)
  })

  it('CRF250X 2004 service manual: 981 kPa is 142 psi and 98 kPa 14 psi, gauge or not', () => {
    assert.deepEqual([Math.round(9.80665 / psi), Math.round(0.980665 / psi)], [142, 14])
  })

  it('warms up and cools down to the same reading', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(0, 12), number(-10, 40), number(-10, 110), (gaugeBar, fromC, toC) => {
      const hot = valueOf(sealedPressure({ gaugeBar, fromC, toC }))
      near(valueOf(coldPressureFor({ wantedBar: hot, wantedAtC: toC, setAtC: fromC })), gaugeBar, 1e-9)
      return Math.sign(hot - gaugeBar) === Math.sign(toC - fromC) || Math.abs(toC - fromC) < 1e-9
    }))
  })

  it('moves one air pressure as one number: its uncertainty cancels where the temperature stays', () => {
    const result = get(sealedPressure({ gaugeBar: 2, fromC: 20, toC: 20, fromAtmosphereBar: { value: 1.01, u: 0.03 } }))
    near(result.u ?? 0, 0, 1e-12)
    nearRelative(get(sealedPressure({ gaugeBar: { value: 2, u: 0.02 }, fromC: 20, toC: 20 })).u, 0.02, 1e-9)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(sealedPressure({ gaugeBar: 2, fromC: undefined, toC: 60 })), ['temperature where it was read'])
    assert.deepEqual(missingOf(sealedPressure({ gaugeBar: 2, fromC: -300, toC: 60 })), ['temperatures above absolute zero'])
    assert.deepEqual(missingOf(sealedPressure({ gaugeBar: -2, fromC: 20, toC: 60 })), ['an absolute pressure above zero'])
  })
})

describe('toAbsolute and toGauge', () => {
  it('differ by the air around and undo each other', () => {
    assert.equal(toAbsolute(2, 1.01325), 3.01325)
    near(toGauge(toAbsolute(2.3, 1.01325), 1.01325), 2.3, 1e-12)
  })
})
