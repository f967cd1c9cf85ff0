import assert from 'node:assert/strict'
import fc from 'fast-check'
import { friction, frictionZone, judgeFriction } from '../../../../src/core/compute/sag/friction'
import { readLength } from '../../../../src/core/compute/working/resolution'
import { get, missingOf, near, valueOf } from '../near'

describe('friction', () => {
  it('5 Steps to Setting Sag: the difference of the two readings, whichever is the longer', () => {
    assert.equal(valueOf(friction([118, 110])), 8)
    assert.equal(valueOf(friction([110, 118])), 8)
  })

  it('says so when the pushed reading is the longer one', () => {
    assert.match(get(friction([110, 118])).working.assumptions.join(), /swapped/)
    assert.deepEqual(get(friction([118, 110])).working.assumptions, [])
  })

  it('is never below zero', () => {
    const length = fc.double({ min: 0, max: 900, noNaN: true })
    fc.assert(fc.property(length, length, (a, b) => valueOf(friction([a, b])) >= 0))
  })

  it('keeps its uncertainty where both readings are equal', () => {
    near(get(friction([readLength(110), readLength(110)])).u, Math.sqrt(2 / 3), 1e-12)
  })

  it('cannot be told from one reading', () => {
    assert.equal(missingOf(friction([118])).length, 1)
    assert.equal(missingOf(friction(undefined)).length, 1)
  })
})

describe('frictionZone', () => {
  for (const [use, low, high] of [['track', 5, 15], ['road', 5, 15], ['motocross', 10, 25]] as const) {
    it(`Thede & Parks, stiction zone of a fork, ${use}: ${low} to ${high} mm`, () => {
      const zone = frictionZone('front', use)!
      assert.deepEqual([zone.lowMm, zone.highMm], [low, high])
      const verdicts = [low - 0.1, low, high, high + 0.1].map((band) => judgeFriction(band, zone))
      assert.deepEqual(verdicts, ['low', 'usual', 'usual', 'high'])
    })
  }

  it('none was found for the rear', () => {
    assert.equal(frictionZone('rear', 'road'), undefined)
  })

  it('trap, soundrider suspension basics: a machine-alone length in the pair with the rider stands out as friction', () => {
    const mixed = valueOf(friction([128, 110]))
    assert.equal(judgeFriction(mixed, frictionZone('front', 'road')!), 'high')
  })
})
