import assert from 'node:assert/strict'
import { frontOverRear } from '../../../../src/core/compute/bounce/compareEnds'
import { missingOf, near, valueOf } from '../near'

describe('frontOverRear', () => {
  it('is 1 where both ends are alike', () => near(valueOf(frontOverRear({ name: 'natural frequency', unit: 'Hz', front: 2, rear: 2 })), 1, 1e-12))

  it('names the end that is missing', () => {
    assert.deepEqual(missingOf(frontOverRear({ name: 'natural frequency', unit: 'Hz', front: 2, rear: undefined })), ['natural frequency, rear'])
    assert.equal(missingOf(frontOverRear({ name: 'damping ratio', unit: '', front: 0.3, rear: 0 })).length, 1)
  })
})
