import assert from 'node:assert/strict'
import { bounceMeanings, describeRatio } from '../../../../src/core/compute/bounce/describeBounce'

describe('bounceMeanings', () => {
  for (const [seen, rebound] of [['keepsBouncing', 'more'], ['wallows', 'more'], ['packsDown', 'less']] as const) {
    it(`H-D service manual, suspension tuning table 1: ${seen} asks for ${rebound} rebound`, () => assert.equal(bounceMeanings[seen].rebound, rebound))
  }

  it('common practice, no source: settling at once is kept, a slow return wants less', () => {
    assert.deepEqual([bounceMeanings.settlesAtOnce.rebound, bounceMeanings.returnsSlowly.rebound], ['keep', 'less'])
  })
})

describe('describeRatio', () => {
  it('tells how far past and how many swings, without a judgement', () => {
    assert.equal(describeRatio(0.3), 'swings 37 % past its rest and has settled to 5 % after 4 swings')
    assert.equal(describeRatio(0.65), 'swings 7 % past its rest and has settled to 5 % after 2 swings')
    assert.equal(describeRatio(0.9), 'comes back to its rest without passing it visibly')
    assert.equal(describeRatio(0), 'swings on without end')
    assert.equal(describeRatio(-1), undefined)
  })
})
