import assert from 'node:assert/strict'
import fc from 'fast-check'
import { dampedFrequency, frequencyFromDeflection, frequencyFromRate, naturalFrequency } from '../../../../src/core/compute/bounce/frequencies'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

describe('dampedFrequency and naturalFrequency', () => {
  it('Rao, shock absorber for a motorcycle: Td 2 s and ζ 0.4037 give ωn 3.4338 rad/s and k 2358.27 N/m at 200 kg', () => {
    const dampedHz = valueOf(dampedFrequency({ cycles: 1, seconds: 2 }))
    const omega = 2 * Math.PI * valueOf(naturalFrequency({ dampedHz, ratio: 0.4037127519 }))
    nearRelative(omega, 3.4338632, 1e-7)
    nearRelative(omega, 3.4338, 1e-4)
    nearRelative(200 * omega ** 2, 2358.2833, 1e-7)
    nearRelative(200 * omega ** 2, 2358.2652, 1e-4)
  })

  it('Rao: 250 mm of push are reached 0.3677195 s after a start at 1.4292632 m/s (book 1.4294 from memory)', () => {
    const [ratio, omega] = [0.4037127519, 3.4338632]
    const damped = omega * Math.sqrt(1 - ratio ** 2)
    const peak = Math.asin(Math.sqrt(1 - ratio ** 2)) / damped
    near(peak, 0.3677195, 1e-6)
    const speed = (0.25 * damped) / (Math.exp(-ratio * omega * peak) * Math.sin(damped * peak))
    near(speed, 1.4292632, 1e-6)
  })

  it('synthetic bounce, ζ 0.3 at 2 Hz: damped period 0.5241424 s', () => {
    near(valueOf(naturalFrequency({ dampedHz: 1 / 0.5241424, ratio: 0.3 })), 2, 1e-6)
  })

  it('is above the damped one, and the same without damping', () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (ratio) => valueOf(naturalFrequency({ dampedHz: 2, ratio })) > 2))
    assert.equal(valueOf(naturalFrequency({ dampedHz: 2, ratio: 0 })), 2)
  })

  it('carries the stop watch', () => {
    near(get(dampedFrequency({ cycles: 1, seconds: { value: 0.5, u: 0.005 } })).u, 0.02, 1e-4)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(dampedFrequency({ cycles: 1, seconds: 0 })), ['cycles and a time above zero'])
    assert.deepEqual(missingOf(naturalFrequency({ dampedHz: 2, ratio: 1 })), ['a damping ratio below 1'])
  })
})

describe('frequencyFromDeflection and frequencyFromRate', () => {
  for (const [mm, hertz] of [[10, 4.98403], [25, 3.15218], [30, 2.87753], [35, 2.66408], [100, 1.57609]] as const) {
    it(`√(g / static deflection) / 2π with g = 9.80665: ${mm} mm is ${hertz} Hz`, () => near(valueOf(frequencyFromDeflection(mm)), hertz, 1e-5))
  }

  it('agree where the deflection is the load over the rate', () => {
    near(valueOf(frequencyFromRate({ wheelRateNPerMm: 18, sprungLoadN: 1350 })), valueOf(frequencyFromDeflection(1350 / 18)), 1e-12)
  })

  it('trap: from the sag alone, preload left out, it comes out too high', () => {
    const sagMm = 35
    assert.ok(valueOf(frequencyFromDeflection(sagMm)) > valueOf(frequencyFromDeflection(sagMm + 40)) * 1.4)
  })

  it('say what is missing', () => {
    assert.deepEqual(missingOf(frequencyFromDeflection(0)), ['a deflection above zero'])
    assert.deepEqual(missingOf(frequencyFromRate({ wheelRateNPerMm: 18, sprungLoadN: undefined })), ['sprung load on this end'])
    assert.equal(missingOf(frequencyFromRate({ wheelRateNPerMm: 0, sprungLoadN: 1350 })).length, 1)
    assert.equal(missingOf(frequencyFromRate({ wheelRateNPerMm: 18, sprungLoadN: 0 })).length, 1)
  })
})
