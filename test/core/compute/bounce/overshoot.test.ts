import assert from 'node:assert/strict'
import fc from 'fast-check'
import { overshoot, ratioFromOvershoot } from '../../../../src/core/compute/bounce/overshoot'
import { near } from '../near'

describe('overshoot', () => {
  const table = [[0.1, 0.729248], [0.2, 0.526621], [0.3, 0.372326], [0.4, 0.253827], [0.5, 0.163034], [0.6, 0.09478], [0.7, 0.045988], [0.8, 0.015165], [0.9, 0.001524]] as const
  for (const [ratio, share] of table) {
    it(`step response of a damped oscillator: ζ ${ratio} swings past by ${share}`, () => near(overshoot(ratio), share, 1e-6))
  }

  it('Rao, ζ of the motorcycle example: a quarter; scipy.signal.step reads 0.2500130787 at ζ 0.4037', () => {
    near(overshoot(Math.log(4) / Math.hypot(Math.PI, Math.log(4))), 0.25, 1e-12)
    near(overshoot(0.4037), 0.2500130787, 1e-6)
  })

  it('is the whole push without damping', () => assert.equal(overshoot(0), 1))

  it('is none from a ratio of 1 on, and undefined below 0', () => {
    assert.deepEqual([overshoot(1), overshoot(1.5), overshoot(-0.1), overshoot(NaN)], [0, 0, undefined, undefined])
  })
})

describe('ratioFromOvershoot', () => {
  for (const [percent, ratio] of [[50, 0.2154538], [25, 0.4037128], [10, 0.591155], [5, 0.6901067], [1, 0.8260851]] as const) {
    it(`step response of a damped oscillator: ${percent} % is ζ ${ratio}`, () => near(ratioFromOvershoot(percent / 100), ratio, 1e-7))
  }

  it('undoes overshoot', () => {
    fc.assert(fc.property(fc.double({ min: 0.001, max: 0.95, noNaN: true }), (ratio) => near(ratioFromOvershoot(overshoot(ratio)!), ratio, 1e-9)))
  })

  it('knows no ratio for no overshoot, and none for one of more than the push', () => {
    assert.deepEqual([ratioFromOvershoot(0), ratioFromOvershoot(1.1), ratioFromOvershoot(1)], [undefined, undefined, 0])
  })
})
