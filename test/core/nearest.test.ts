import assert from 'node:assert/strict'
import { nearest } from '../../src/core/nearest'
import { busyMs } from '../busyMs'

describe('the nearest name', () => {
  const names = ['fork_rebound', 'fork_preload', 'shock_rebound', 'shock_preload', 'fork_height']

  it('is the one that a slip of the finger left', () => {
    assert.equal(nearest('fork_rebond', names), 'fork_rebound')
    assert.equal(nearest('fork_reobund', names), 'fork_rebound')
    assert.equal(nearest('Shock_Rebound', names), 'shock_rebound')
    assert.equal(nearest('fork_hight', names), 'fork_height')
  })

  it('is none when more than a third of the word differs', () => {
    assert.equal(nearest('tyres', names), undefined)
    assert.equal(nearest('', names), undefined)
    assert.equal(nearest('', ['a']), undefined)
    assert.equal(nearest('fork_rebound', []), undefined)
  })

  it('counts two swapped letters as one slip', () => {
    assert.equal(nearest('ab', ['ba']), 'ba')
    assert.equal(nearest('abc', ['cab']), undefined)
  })

  it('takes the first of two equally near', () => {
    assert.equal(nearest('cat', ['bat', 'rat']), 'bat')
  })

  it('gives up on a long word at once', () => {
    const long = 'x'.repeat(1e6)
    assert.ok(busyMs(() => assert.equal(nearest(long, [long]), undefined)) < 200)
  })
})
