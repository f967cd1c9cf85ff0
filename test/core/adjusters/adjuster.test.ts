import assert from 'node:assert/strict'
import { countedFrom, naturalEnd, slotKey, slotsOf, usualHigherIs } from '../../../src/core/adjusters/adjuster'
import { findControl } from '../../../src/core/adjusters/controls'
import { findUnit } from '../../../src/core/notation/units'
import { anAdjuster } from './anAdjuster'

const control = (name: string) => findControl(name)!
const unit = (name: string) => findUnit(name)!

describe('the end an adjuster is counted from', () => {
  it('is closed for damping, fully backed off for preload, and none for what is measured', () => {
    for (const counts of ['clicks', 'turns', 'flats']) {
      assert.equal(naturalEnd(control('rebound'), unit(counts)), 'closed')
      assert.equal(naturalEnd(control('high_speed_compression'), unit(counts)), 'closed')
      assert.equal(naturalEnd(control('preload'), unit(counts)), 'open')
    }
    for (const name of ['fork_height', 'ride_height', 'air_pressure', 'oil_level', 'spring_rate', 'tyre_pressure']) assert.equal(naturalEnd(control(name), unit('mm')), undefined)
  })

  it('is fully in for preload rings, of which fewer show the further it is in', () => {
    assert.equal(naturalEnd(control('preload'), unit('rings')), 'closed')
    assert.equal(naturalEnd(control('preload'), unit('lines')), 'closed')
  })

  it('is none for steps and dials, whose numbers are their own', () => {
    for (const name of ['preload', 'rebound']) for (const counts of ['steps', 'dial']) assert.equal(naturalEnd(control(name), unit(counts)), undefined)
  })

  it('is what the notebook says, where it says so', () => {
    assert.equal(countedFrom(control('rebound'), unit('clicks'), { counted: 'in' }), 'open')
    assert.equal(countedFrom(control('preload'), unit('turns'), { counted: 'out' }), 'closed')
    assert.equal(countedFrom(control('rebound'), unit('dial'), { counted: 'out' }), 'closed')
  })

  // Longer is more preload on one machine (77.5 soft, 85.5 hard: YZF-R1 2023) and less on another.
  it('is none for a length that says whether longer is more', () => {
    assert.equal(countedFrom(control('preload'), unit('mm'), {}), 'open')
    assert.equal(countedFrom(control('preload'), unit('mm'), { higherIs: 'more' }), undefined)
    assert.equal(countedFrom(control('preload'), unit('mm'), { higherIs: 'less' }), undefined)
  })
})

describe('an adjuster', () => {
  it('has a slot a leg, or one', () => {
    const pair = anAdjuster('rebound', 'clicks', { legs: ['left', 'right'] })
    assert.deepEqual(slotsOf(pair), [{ adjuster: pair, leg: 'left' }, { adjuster: pair, leg: 'right' }])
    const single = anAdjuster('rebound', 'clicks')
    assert.deepEqual(slotsOf(single), [{ adjuster: single }])
    assert.equal(slotKey('fork_rebound', 'left'), 'fork_rebound/left')
    assert.equal(slotKey('shock_rebound', undefined), 'shock_rebound')
  })

  it('means more by a higher figure, save where more oil is a smaller gap', () => {
    assert.equal(usualHigherIs(control('oil_level'), unit('mm')), 'more')
    assert.equal(usualHigherIs(control('oil_level'), unit('ml')), 'less')
    assert.equal(usualHigherIs(control('preload'), unit('steps')), 'more')
  })
})
