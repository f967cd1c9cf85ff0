import assert from 'node:assert/strict'
import { shockMeanWheelRate } from '../../../../src/core/compute/springs/shockMeanWheelRate'
import { shockWheelRate } from '../../../../src/core/compute/springs/shockWheelRate'
import { targetRate } from '../../../../src/core/compute/springs/targetRate'
import { verticalRate } from '../../../../src/core/compute/springs/verticalRate'
import { missingOf, near, valueOf } from '../near'

describe('shockWheelRate', () => {
  it('G. Byrnes, Leverage and Linkages: 95 N/mm at 0.45 is 19.2375 N/mm, the ratio squared; twin springs are two', () => {
    near(valueOf(shockWheelRate({ springRateNPerMm: 95, motionRatio: 0.45, springs: 1 })), 19.2375, 1e-9)
    near(valueOf(shockWheelRate({ springRateNPerMm: 95, motionRatio: 0.45, springs: 2 })), 38.475, 1e-9)
    assert.deepEqual(missingOf(shockWheelRate({ springRateNPerMm: 95, motionRatio: 0, springs: 1 })), ['a spring rate and a motion ratio above zero'])
  })
})

describe('shockMeanWheelRate', () => {
  const facts = { springRateNPerMm: 100, preloadMm: 10, springs: 1, leverage: { motionRatio: 0.5 } }
  it('is the constant ratio’s rate where the ratio is constant, whatever the preload', () => {
    for (const preloadMm of [0, 10, 30]) near(valueOf(shockMeanWheelRate({ ...facts, preloadMm, fromMm: 8, toMm: 30 })), 25, 1e-9)
  })
  it('needs two places', () => assert.deepEqual(missingOf(shockMeanWheelRate({ ...facts, fromMm: 30, toMm: 30 })), ['a rider sag above the bike’s']))
  it('says that the table does not reach', () => {
    assert.match(missingOf(shockMeanWheelRate({ ...facts, leverage: { table: [[0, 0], [20, 10]] }, fromMm: 8, toMm: 30 })).join(), /reaches 30 mm/)
  })
})

describe('targetRate', () => {
  it('450 N between 10 and 35 mm is 18 N/mm', () => near(valueOf(targetRate({ riderLoadN: 450, bikeSagMm: 10, riderSagMm: 35 })), 18, 1e-12))
  it('has no answer for targets the wrong way round', () => assert.equal(missingOf(targetRate({ riderLoadN: 450, bikeSagMm: 35, riderSagMm: 35 })).length, 1))
})

describe('verticalRate', () => {
  it('plane trigonometry: at 60° twice the rate along the tubes', () => near(valueOf(verticalRate({ rateAlongTubesNPerMm: 20, rakeDeg: 60 })), 40, 1e-9))
})
