import assert from 'node:assert/strict'
import { meantName } from '../../../src/core/rules/meantName'

describe('meantName', () => {
  it('finds a slip of the pen', () => {
    assert.equal(meantName('fork_rebond', ['fork_rebound', 'shock_rebound']), 'fork_rebound')
    assert.equal(meantName('basline', ['baseline', 'run-1']), 'baseline')
  })

  it('never takes one end, side, circuit or load case for the other', () => {
    assert.equal(meantName('shock_rebound', ['fork_rebound']), undefined)
    assert.equal(meantName('front_tyre', ['rear_tyre']), undefined)
    assert.equal(meantName('low_speed', ['high_speed']), undefined)
    assert.equal(meantName('right', ['left']), undefined)
    assert.equal(meantName('front_tyre_cold', ['front_tyre_hot']), undefined)
  })

  it('never takes one number for another', () => {
    assert.equal(meantName('run-30', ['run-3', 'run-20']), undefined)
    assert.equal(meantName('rnu-3', ['run-3', 'run-4']), 'run-3')
  })
})
