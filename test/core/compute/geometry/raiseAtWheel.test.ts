import assert from 'node:assert/strict'
import { raiseAtWheel } from '../../../../src/core/compute/geometry/raiseAtWheel'
import { missingOf, valueOf } from '../near'

describe('raiseAtWheel', () => {
  it('definition of the ratio: 4 mm more shock at 0.5 raise the rear by 8 mm', () => {
    assert.equal(valueOf(raiseAtWheel({ shockLongerMm: 4, motionRatio: 0.5 })), 8)
    assert.equal(valueOf(raiseAtWheel({ shockLongerMm: -2, motionRatio: 0.5 })), -4)
  })

  it('needs a motion ratio', () => {
    assert.deepEqual(missingOf(raiseAtWheel({ shockLongerMm: 4, motionRatio: undefined })), ['motion ratio, shock to wheel'])
    assert.equal(missingOf(raiseAtWheel({ shockLongerMm: 4, motionRatio: 0 })).length, 1)
  })
})
