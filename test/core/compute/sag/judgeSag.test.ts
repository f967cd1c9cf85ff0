import assert from 'node:assert/strict'
import { judgeSag } from '../../../../src/core/compute/sag/judgeSag'

const window = { lowMm: 30, highMm: 35 }

describe('judgeSag', () => {
  for (const [sagMm, where, byMm] of [[29, 'below', 1], [30, 'within', 0], [35, 'within', 0], [38, 'above', 3]] as const) {
    it(`${sagMm} mm is ${where} a window of 30 to 35 mm, by ${byMm} mm`, () => {
      assert.deepEqual(judgeSag({ value: sagMm }, window), { where, byMm, sure: undefined })
    })
  }

  it('is sure when twice the standard uncertainty leaves the verdict as it is', () => {
    assert.equal(judgeSag({ value: 38, u: 0.7 }, window).sure, true)
    assert.equal(judgeSag({ value: 30.5, u: 0.7 }, window).sure, false)
    assert.equal(judgeSag({ value: 32, u: 1 }, window).sure, true)
    assert.equal(judgeSag({ value: 38, u: 2 }, window).sure, false)
    assert.equal(judgeSag({ value: 36, u: 0.7 }, window).sure, false)
    assert.equal(judgeSag({ value: 34.5, u: 0.7 }, window).sure, false)
  })
})
