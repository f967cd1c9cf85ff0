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

  it('never takes them for one another, be the rest of the name ever so long', () => {
    for (const [one, other] of [
      ['front_tyre_pressure_cold', 'rear_tyre_pressure_cold'], ['fork_preload_left_leg', 'fork_preload_right_leg'], ['shock_rebound_reservoir', 'shock_preload_reservoir'],
      ['shock_low_compression', 'shock_high_compression'], ['front_static_sag_window', 'front_rider_sag_window'],
    ] as const) {
      assert.equal(meantName(one, [other]), undefined, `${one}, ${other}`)
      assert.equal(meantName(one.replace('_', '__'), [one, other]), one)
    }
  })

  it('takes a name that leaves out where it is', () => {
    assert.equal(meantName('fork_height_extra', ['height_extra']), 'height_extra')
  })

  it('takes digits for one number where they stand together', () => {
    assert.equal(meantName('run-12', ['run-1-2']), undefined)
  })

  it('leaves out the name itself', () => {
    assert.equal(meantName('fork_rebond', ['fork_rebond', 'fork_rebound'], 'fork_rebond'), 'fork_rebound')
  })

  it('compares with no more names than a machine or a season has', () => {
    const names = (count: number) => ['fork_rebound', ...Array.from({ length: count - 1 }, (_, at) => `other-${at}`)]
    assert.equal(meantName('fork_rebond', names(400)), 'fork_rebound')
    assert.equal(meantName('fork_rebond', names(401)), undefined)
  })
})
