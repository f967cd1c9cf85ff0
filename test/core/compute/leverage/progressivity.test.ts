import assert from 'node:assert/strict'
import { progressivity } from '../../../../src/core/compute/leverage/progressivity'
import { get, missingOf, near } from '../near'

describe('progressivity', () => {
  it('tells both ends and the rise between them, here 0.42 to 0.537', () => {
    const table = [0, 20, 45, 70, 100, 130].map((z) => [z, 0.42 * z + 0.00045 * z * z] as const)
    const result = get(progressivity({ table }, 130))
    near(result.ratioAtTop, 0.42, 1e-9)
    near(result.ratioAtEnd, 0.537, 1e-9)
    near(result.percent, (100 * 0.117) / 0.42, 1e-6)
  })

  it('is none for a constant ratio and below zero for a falling one', () => {
    assert.equal(get(progressivity({ motionRatio: 0.45 }, 130)).percent, 0)
    assert.ok(get(progressivity({ table: [[0, 0], [50, 25], [100, 45]] }, 100)).percent < 0)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(progressivity({ motionRatio: 0.45 }, undefined)), ['wheel travel'])
    assert.deepEqual(missingOf(progressivity({ motionRatio: 0.45 }, 0)), ['wheel travel'])
    assert.equal(missingOf(progressivity({ table: [[0, 0], [50, 25]] }, 100)).length, 1)
    assert.equal(missingOf(progressivity(undefined, 100)).length, 1)
  })
})
