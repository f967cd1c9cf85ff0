import assert from 'node:assert/strict'
import { dampingCoefficient } from '../../../../src/core/compute/bounce/dampingCoefficient'
import { missingOf, nearRelative, valueOf } from '../near'

const rao = { massKg: 200, naturalHz: 3.4338632 / (2 * Math.PI), ratio: 0.4037127519 }

describe('dampingCoefficient', () => {
  it('Rao, shock absorber for a motorcycle: 554.5177 N·s/m, printed 554.4981; critical 1373.5453', () => {
    nearRelative(valueOf(dampingCoefficient(rao)), 554.5177, 1e-7)
    nearRelative(valueOf(dampingCoefficient(rao)), 554.4981, 1e-4)
    nearRelative(valueOf(dampingCoefficient({ ...rao, ratio: 1 })), 1373.5453, 1e-7)
  })

  it('trap, askfilo worked solution: 1109 N·s/m, twice too much, must not pass; 2·m·ln 4 is 554.518', () => {
    nearRelative(valueOf(dampingCoefficient(rao)), 2 * 200 * Math.log(4), 1e-7)
    assert.ok(Math.abs(valueOf(dampingCoefficient(rao)) - 1109) > 500)
  })

  it('answersarena, 6 kg on 5400 N/m at ζ 0.0643978280: 23.1832181 N·s/m', () => {
    nearRelative(valueOf(dampingCoefficient({ massKg: 6, naturalHz: 30 / (2 * Math.PI), ratio: 0.064397828 })), 23.1832181, 1e-8)
  })

  it('needs a mass', () => assert.equal(missingOf(dampingCoefficient({ ...rao, massKg: 0 })).length, 1))
})
