import assert from 'node:assert/strict'
import { dampedFromNatural } from '../../../../src/core/compute/bounce/dampedFromNatural'
import { naturalFrequency } from '../../../../src/core/compute/bounce/frequencies'
import { missingOf, near, valueOf } from '../near'

describe('dampedFromNatural', () => {
  it('turns `naturalFrequency` round: 2 Hz at a ratio of 0.6 is 1.6 Hz damped', () => {
    near(valueOf(dampedFromNatural({ naturalHz: 2, ratio: 0.6 })), 1.6, 1e-12)
    near(valueOf(naturalFrequency({ dampedHz: 1.6, ratio: 0.6 })), 2, 1e-12)
  })
  it('an end damped beyond 1 swings at no frequency', () => assert.deepEqual(missingOf(dampedFromNatural({ naturalHz: 2, ratio: 1 })), ['a damping ratio below 1']))
})
