import assert from 'node:assert/strict'
import { forkRateAlongTubes, forkRateVertical } from '../../../../src/core/compute/springs/forkWheelRate'
import { get, missingOf, near, nearRelative, valueOf } from '../near'

const legs = { legRatesNPerMm: [9, 9], rakeDeg: 24 }

describe('forkRateVertical', () => {
  it('G. Byrnes, Leverage and Linkages: two springs of 9 N/mm at 24° are 21.568 N/mm at the axle, about 20 % more', () => {
    nearRelative(valueOf(forkRateVertical(legs)), 21.568, 1e-4)
    nearRelative(valueOf(forkRateVertical(legs)) / 18, 1.2, 0.01)
  })

  it('G. Byrnes: springs compress about 1.1 mm per mm of vertical movement', () => {
    nearRelative(Math.sqrt(valueOf(forkRateVertical(legs)) / 18), 1.1, 0.01)
  })

  it('is the sum of unequal legs without rake', () => {
    assert.equal(valueOf(forkRateVertical({ legRatesNPerMm: [9, 9.5], rakeDeg: 0 })), 18.5)
  })
})

describe('forkRateAlongTubes', () => {
  it('statics of a sliding guide: load per mm along the tubes, times what of that mm is vertical, is the vertical rate turned round', () => {
    const cos = Math.cos((24 * Math.PI) / 180)
    near(valueOf(forkRateAlongTubes(legs)), 18 / cos, 1e-9)
    near(valueOf(forkRateAlongTubes(legs)) / cos, valueOf(forkRateVertical(legs)), 1e-9)
  })

  it('carries the uncertainty of each leg', () => {
    near(get(forkRateAlongTubes({ legRatesNPerMm: [{ value: 9, u: 0.3 }, { value: 9, u: 0.4 }], rakeDeg: 0 })).u, 0.5, 1e-9)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(forkRateAlongTubes({ legRatesNPerMm: [], rakeDeg: 24 })), ['spring rate of the fork'])
    assert.deepEqual(missingOf(forkRateAlongTubes({ legRatesNPerMm: [9], rakeDeg: undefined })), ['rake'])
  })
})
