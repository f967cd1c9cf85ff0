import assert from 'node:assert/strict'
import fc from 'fast-check'
import { airSpring } from '../../../../src/core/compute/springs/airSpring'
import { airForce, airPressure, airRate, airRoom } from '../../../../src/core/compute/springs/airWorking'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

const leg = { sealDiameterMm: 43, boreMm: 38, oilLevelMm: 120, travelMm: 150, springVolumeMl: 40 }
const question = { ...leg, atMm: 100, exponent: 1.2, atmosphereBar: 1.01325, gaugeBar: 0.5 }

describe('airWorking', () => {
  it('Moran & Shapiro, example 2.1: 3 bar absolute at twice the room is 1.06066 bar with n = 1.5', () => {
    // A leg whose air has half the room at its full travel as at none: 3 bar there, so that the way out is the example.
    const [A, travel] = [Math.PI * 10 ** 2, 100]
    const boxed = { sealDiameterMm: 20, boreMm: 20, oilLevelMm: travel, travelMm: travel, gaugeBar: 1.0606601717798212 - 1.01325 }
    near(valueOf(airRoom(boxed)), (A * 200) / 1000, 1e-9)
    near(valueOf(airPressure({ ...boxed, atMm: travel, exponent: 1.5, atmosphereBar: 1.01325 })) + 1.01325, 3, 1e-9)
  })

  it('S17: 10 mm of level in a 43 mm bore are 14.522 ml of room', () => {
    const room = (oilLevelMm: number) => valueOf(airRoom({ ...leg, boreMm: 43, oilLevelMm }))
    near(room(130) - room(120), 14.522, 1e-3)
  })

  it('property: force, rate and pressure with their working are those of the spring', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 150, noNaN: true }), fc.double({ min: 1, max: 1.4, noNaN: true }), fc.double({ min: -0.5, max: 10, noNaN: true }), (atMm, exponent, gaugeBar) => {
      const asked = { ...question, atMm, exponent, gaugeBar }
      const at = get(airSpring(asked)).at(atMm)
      nearRelative(valueOf(airPressure(asked)) + 2, at.gaugeBar + 2, 1e-9)
      near(valueOf(airForce(asked)), at.forceN, 1e-6)
      nearRelative(valueOf(airRate(asked)), at.rateNPerMm, 1e-9)
    }), { numRuns: 100 })
  })

  it('novasolver, air spring stiffness k = n·p·A²/V: the rate is the slope of the force', () => {
    const slope = (valueOf(airForce({ ...question, atMm: 100.001 })) - valueOf(airForce({ ...question, atMm: 99.999 }))) / 0.002
    nearRelative(valueOf(airRate(question)), slope, 1e-6)
  })

  it('sonicsprings.com against a published error (T3): a larger air gap is softer at the end and hardly different at the beginning', () => {
    const force = (oilLevelMm: number, atMm: number) => valueOf(airForce({ ...question, oilLevelMm, atMm }))
    assert.ok(force(140, 150) < force(120, 150) - 50)
    assert.ok(Math.abs(force(140, 10) - force(120, 10)) < 3)
  })

  it('gauge and absolute pressure are kept apart: vented air at no travel pushes with nothing', () => {
    near(valueOf(airForce({ ...question, gaugeBar: 0, atMm: 0 })), 0, 1e-9)
    near(valueOf(airPressure({ ...question, gaugeBar: 0, atMm: 0 })), 0, 1e-12)
    assert.ok(valueOf(airRate({ ...question, gaugeBar: 0, atMm: 0 })) > 0)
  })

  it('says where there is no room for the air, and never gives NaN', () => {
    assert.match(missingOf(airForce({ ...question, atMm: 150, springVolumeMl: 140 })).join(), /^room for the air/)
    assert.match(missingOf(airForce({ ...question, gaugeBar: -2 })).join(), /^an absolute pressure/)
    assert.deepEqual(missingOf(airForce({ ...question, atMm: undefined })), ['travel'])
  })
})
