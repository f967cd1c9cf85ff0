import assert from 'node:assert/strict'
import { levelChangeForOil, oilForLevelChange, spacerDisplacement } from '../../../../src/core/compute/springs/oilVolume'
import { missingOf, near, valueOf } from '../near'

describe('oilForLevelChange and levelChangeForOil', () => {
  it('volume of a cylinder, 43 mm bore: 14.522 ml for 10 mm, 6.886 mm for 10 ml', () => {
    near(valueOf(oilForLevelChange({ boreMm: 43, changeMm: 10 })), 14.522, 1e-3)
    near(valueOf(levelChangeForOil({ boreMm: 43, oilMl: 10 })), 6.886, 1e-3)
  })

  it('Z750 2003 service manual, p. 13-9: 115 ± 2 mm is 4.53 ± 0.08 in, here some 5.8 ml between the ends', () => {
    near(115 / 25.4, 4.53, 0.01)
    near(valueOf(oilForLevelChange({ boreMm: 43, changeMm: 4 })), 5.81, 0.01)
  })

  it('undo each other, sign and all', () => {
    near(valueOf(levelChangeForOil({ boreMm: 41, oilMl: valueOf(oilForLevelChange({ boreMm: 41, changeMm: -7 })) })), -7, 1e-12)
  })

  it('need a bore', () => {
    assert.deepEqual(missingOf(oilForLevelChange({ boreMm: 0, changeMm: 10 })), ['a bore above zero'])
    assert.equal(missingOf(levelChangeForOil({ boreMm: 0, oilMl: 10 })).length, 1)
  })
})

describe('spacerDisplacement', () => {
  const spacer = { lengthMm: 200, outerMm: 35, innerMm: 30, boreMm: 36.6 }

  it('f650gs, fork oil: 200 mm of 35 by 30 mm tube in a bore of 36.6 mm raises the level by 48.523 mm', () => {
    near(valueOf(spacerDisplacement(spacer)), 48.523, 0.01)
  })

  it('trap, f650gs, fork oil: the printed 51 mm must not pass', () => {
    assert.ok(Math.abs(valueOf(spacerDisplacement(spacer)) - 51) > 2)
  })

  it('may fill the bore', () => near(valueOf(spacerDisplacement({ ...spacer, boreMm: 35 })), (200 * (35 ** 2 - 30 ** 2)) / 35 ** 2, 1e-9))

  it('must fit the bore', () => assert.equal(missingOf(spacerDisplacement({ ...spacer, boreMm: 34 })).length, 1))
})
