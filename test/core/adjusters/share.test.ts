import assert from 'node:assert/strict'
import { shareAt, spanOf } from '../../../src/core/adjusters/share'
import { anAdjuster } from './anAdjuster'

describe('the share of an adjuster’s range', () => {
  it('rises towards more of what it controls, from whichever end it is counted', () => {
    assert.equal(shareAt(anAdjuster('rebound', 'clicks', { range: 20 }), 5), 0.75)
    assert.equal(shareAt(anAdjuster('rebound', 'clicks', { range: 20, end: 'open' }), 5), 0.25)
    assert.equal(shareAt(anAdjuster('preload', 'turns', { range: 12 }), 3), 0.25)
  })

  it('counts steps from 1, either way round', () => {
    assert.equal(spanOf(anAdjuster('preload', 'steps', { range: 7 })), 6)
    assert.equal(shareAt(anAdjuster('preload', 'steps', { range: 7 }), 1), 0)
    assert.equal(shareAt(anAdjuster('preload', 'steps', { range: 7, higherIs: 'less' }), 1), 1)
    assert.equal(spanOf(anAdjuster('preload', 'steps', { range: 1 })), undefined)
  })

  it('is not known without a range, and beyond it where it is recorded so', () => {
    assert.equal(shareAt(anAdjuster('rebound', 'clicks'), 5), undefined)
    assert.equal(shareAt(anAdjuster('rebound', 'clicks', { range: 20 }), 25), -0.25)
  })
})
