import assert from 'node:assert/strict'
import fc from 'fast-check'
import { perFlat, turnAdjuster } from '../../../../src/core/compute/preload/turnAdjuster'
import { near } from '../near'

const collar = { at: 4, mmPerCount: 1, lowest: 0, highest: 12, step: 0.5 }

describe('perFlat', () => {
  for (const [pitch, flat] of [[1, 0.16667], [1.25, 0.20833], [1.5, 0.25]] as const) {
    it(`geometry of a hexagon: a pitch of ${pitch} mm is ${flat} mm a flat`, () => near(perFlat(pitch), flat, 5e-6))
  }
})

describe('turnAdjuster', () => {
  it('rounds to the nearest step from where it stands', () => {
    assert.deepEqual(turnAdjuster(collar, 2.4), { to: 6.5, byCounts: 2.5, givesMm: 2.5, shortMm: 0 })
    assert.equal(turnAdjuster({ ...collar, at: 3.3 }, 1)?.to, 4.3)
  })

  it('stops at the ends of the range and says how much is wanting', () => {
    assert.deepEqual(turnAdjuster(collar, 20), { to: 12, byCounts: 8, givesMm: 8, shortMm: 12 })
    assert.deepEqual(turnAdjuster(collar, -6), { to: 0, byCounts: -4, givesMm: -4, shortMm: 2 })
  })

  it('tells what is wanting in mm at the spring and not in counts', () => {
    near(turnAdjuster({ ...collar, mmPerCount: 1.5 }, 20)?.shortMm, 8, 1e-9)
  })

  it('is not short where the range ends between two steps of what is wanted', () => {
    assert.equal(turnAdjuster({ ...collar, highest: 6.4 }, 2.4)?.shortMm, 0)
  })

  it('trap, YZF-R1 2023 distance A 77.5 soft to 85.5 hard against manuals whose length shrinks: the sign is the adjuster’s own', () => {
    const longer = { at: 78.5, lowest: 77.5, highest: 85.5, step: 0.5, mmPerCount: 1 }
    const shorter = { ...longer, mmPerCount: -1 }
    assert.equal(turnAdjuster(longer, 2)?.to, 80.5)
    assert.deepEqual(turnAdjuster(shorter, 2), { to: 77.5, byCounts: -1, givesMm: 1, shortMm: 1 })
  })

  it('trap, FJ-09 2014 ring 1 soft to 7 hard against XP560D ring 7 soft to 1 hard: more preload goes up or down', () => {
    const ring = { at: 4, lowest: 1, highest: 7, step: 1, mmPerCount: 2 }
    assert.equal(turnAdjuster(ring, 4)?.to, 6)
    assert.equal(turnAdjuster({ ...ring, mmPerCount: -2 }, 4)?.to, 2)
  })

  it('H-D preload table: half counts are possible', () => {
    assert.equal(turnAdjuster({ at: 1, mmPerCount: 1, lowest: 1, highest: 14, step: 0.5 }, 2.5)?.to, 3.5)
  })

  it('goes as far as it is asked where the range is unknown', () => {
    assert.equal(turnAdjuster({ at: 4, mmPerCount: 1.5, step: 1 }, 30)?.to, 24)
  })

  it('is undefined where a count moves nothing, the step is none or the range is upside down', () => {
    assert.equal(turnAdjuster({ ...collar, mmPerCount: 0 }, 1), undefined)
    assert.equal(turnAdjuster({ ...collar, step: 0 }, 1), undefined)
    assert.equal(turnAdjuster({ ...collar, lowest: 13 }, 1), undefined)
  })

  it('never leaves the range, and gives what it moves', () => {
    fc.assert(fc.property(fc.double({ min: -50, max: 50, noNaN: true }), fc.constantFrom(-2, -0.5, 1, 1.5), (change, mmPerCount) => {
      const move = turnAdjuster({ ...collar, mmPerCount }, change)!
      near(move.givesMm, move.byCounts * mmPerCount, 1e-9)
      return move.to >= 0 && move.to <= 12 && move.shortMm >= 0
    }))
  })
})
