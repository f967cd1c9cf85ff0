import assert from 'node:assert/strict'
import { forkSpringFor, shockSpringFor } from '../../../../src/core/compute/springs/springAtDamper'
import { forkRateAlongTubes } from '../../../../src/core/compute/springs/forkWheelRate'
import { missingOf, near, valueOf } from '../near'

describe('shockSpringFor', () => {
  it('G. Byrnes, Leverage and Linkages: two fork springs of 9 N/mm are met by one of 72 N/mm at 2:1', () => {
    assert.equal(valueOf(shockSpringFor({ wheelRateNPerMm: 18, motionRatio: 0.5 })), 72)
  })

  it('Automotive Chassis Engineering, eq. 3.29 to 3.33: wheel rate times leverage squared is the spring rate', () => {
    near(valueOf(shockSpringFor({ wheelRateNPerMm: 20, motionRatio: 1 / 2.154 })), 20 * 2.154 ** 2, 1e-9)
  })

  it('needs a motion ratio above zero', () => {
    assert.equal(missingOf(shockSpringFor({ wheelRateNPerMm: 18, motionRatio: 0 })).length, 1)
  })
})

describe('forkSpringFor', () => {
  it('gives back the springs that make the rate along the tubes, in one leg or two', () => {
    const rateAlongTubesNPerMm = valueOf(forkRateAlongTubes({ legRatesNPerMm: [9.5, 9.5], rakeDeg: 25 }))
    near(valueOf(forkSpringFor({ rateAlongTubesNPerMm, rakeDeg: 25, legs: 2 })), 9.5, 1e-12)
    near(valueOf(forkSpringFor({ rateAlongTubesNPerMm, rakeDeg: 25, legs: 1 })), 19, 1e-12)
  })
})
