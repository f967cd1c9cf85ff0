import assert from 'node:assert/strict'
import { crossOver, dualRateForce } from '../../../../src/core/compute/springs/dualRate'
import { near } from '../near'

const stack = { softRateNPerMm: 8, stiffRateNPerMm: 12, softTravelMm: 30 }

describe('crossOver', () => {
  it('autorepairmagz, initial rate that crosses over to the final one: 8 and 12 N/mm give 4.8, then 12 N/mm', () => {
    const change = crossOver(stack)
    near(change.firstRateNPerMm, 4.8, 1e-12)
    assert.equal(change.secondRateNPerMm, 12)
    near(change.atMm, 50, 1e-12)
    near(change.atN, 240, 1e-12)
  })
})

describe('dualRateForce', () => {
  it('is one line up to the change and a steeper one after, without a jump', () => {
    near(dualRateForce(stack, 10), 48, 1e-12)
    near(dualRateForce(stack, 50), 240, 1e-12)
    near(dualRateForce(stack, 60), 360, 1e-12)
    near(dualRateForce(stack, 50 + 1e-9), 240, 1e-6)
  })

  it('is nothing while the stack is loose', () => assert.equal(dualRateForce(stack, -3), 0))
})
