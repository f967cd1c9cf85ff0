import assert from 'node:assert/strict'
import fc from 'fast-check'
import { liftingAcceleration, liftingDeceleration, loadTransfer } from '../../../../src/core/compute/loads/loadTransfer'
import { get, missingOf, near, valueOf } from '../near'

const machine = { massKg: 280, wheelbaseMm: 1400, aheadOfRearMm: 700, heightMm: 620 }
const at = (decelerationG: number, of = machine) => get(loadTransfer({ ...of, decelerationG }))
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('loadTransfer', () => {
  for (const [g, front, rear] of [[0, 1372.931, 1372.931], [0.5, 1980.943, 764.919], [0.8, 2345.751, 400.111], [1, 2588.956, 156.906]] as const) {
    it(`moments, 280 kg, L 1.4, b 0.70, h 0.62 m: at ${g} g front ${front}, rear ${rear} N`, () => {
      near(at(g).frontN.value, front, 1e-3)
      near(at(g).rearN.value, rear, 1e-3)
    })
  }

  it('the sum of the axle loads is constant: 2745.862 N', () => {
    fc.assert(fc.property(number(-2, 2), (g) => near(at(g).frontN.value + at(g).rearN.value, 2745.862, 1e-3)))
  })

  it('reports a wheel that lifts with its load below zero, and does not clip it', () => {
    const braking = at(1.3)
    assert.ok(braking.rearN.value < 0)
    assert.equal(braking.lifted, 'rear')
    assert.equal(at(-1.3).lifted, 'front')
    assert.equal(at(0.5).lifted, undefined)
  })

  it('J. R. Davis, azusastreetriders: twice the height transfers twice as much, twice the wheelbase half', () => {
    const moved = (of: typeof machine) => at(0.5, of).frontN.value - at(0, of).frontN.value
    near(moved({ ...machine, heightMm: 1240 }), 2 * moved(machine), 1e-9)
    near(moved({ ...machine, wheelbaseMm: 2800 }), moved(machine) / 2, 1e-9)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(loadTransfer({ ...machine, heightMm: undefined, decelerationG: 1 })), ['height of the centre of mass'])
    assert.deepEqual(missingOf(loadTransfer({ ...machine, wheelbaseMm: 0, decelerationG: 1 })), ['a mass and a wheelbase above zero'])
  })
})

describe('liftingDeceleration and liftingAcceleration', () => {
  it('encyclopaedia Bicycle and motorcycle dynamics (figure from memory): 60 cm behind, 120 cm high is 0.5 g', () => {
    assert.equal(valueOf(liftingDeceleration({ behindFrontMm: 600, heightMm: 1200 })), 0.5)
  })

  it('J. S. Riel 2005: 0.7 g on the level is 0.6 g down a slope of 10 %', () => {
    near(valueOf(liftingDeceleration({ behindFrontMm: 700, heightMm: 1000, slope: -0.1 })), 0.6, 1e-9)
  })

  it('mirrored: a slope of 10 % up makes the front lift 0.1 g sooner', () => {
    near(valueOf(liftingAcceleration({ aheadOfRearMm: 700, heightMm: 1000, slope: 0.1 })), 0.6, 1e-9)
  })

  it('are where the load of the lifting wheel is zero', () => {
    fc.assert(fc.property(number(500, 900), number(400, 900), (aheadOfRearMm, heightMm) => {
      const of = { ...machine, aheadOfRearMm, heightMm }
      near(at(valueOf(liftingDeceleration({ behindFrontMm: 1400 - aheadOfRearMm, heightMm })), of).rearN.value, 0, 1e-9)
      near(at(-valueOf(liftingAcceleration({ aheadOfRearMm, heightMm })), of).frontN.value, 0, 1e-9)
    }))
  })

  it('need a height', () => {
    assert.equal(missingOf(liftingDeceleration({ behindFrontMm: 600, heightMm: 0 })).length, 1)
    assert.equal(missingOf(liftingAcceleration({ aheadOfRearMm: 600, heightMm: undefined })).length, 1)
  })
})
