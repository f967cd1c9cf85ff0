import assert from 'node:assert/strict'
import fc from 'fast-check'
import { springForTargets } from '../../../../src/core/compute/springs/springForTargets'
import { sagUnderLoad } from '../../../../src/core/compute/springs/sagUnderLoad'
import { get, missingOf, near, valueOf } from '../near'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('springForTargets', () => {
  it('linear spring: 450 N over 25 mm asks for 18 N/mm', () => {
    const spring = get(springForTargets({ bikeLoadN: 720, riderLoadN: 450, bikeSagMm: 12, riderSagMm: 37 }))
    near(spring.wheelRate.value, 18, 1e-12)
    near(valueOf(spring.wheelPreload), 28, 1e-12)
  })

  it('meets both targets at once', () => {
    fc.assert(fc.property(number(500, 1500), number(200, 800), number(5, 30), number(5, 60), (bikeLoadN, riderLoadN, bikeSagMm, more) => {
      const spring = get(springForTargets({ bikeLoadN, riderLoadN, bikeSagMm, riderSagMm: bikeSagMm + more }))
      const end = { wheelRateNPerMm: spring.wheelRate.value, wheelPreloadMm: valueOf(spring.wheelPreload) }
      near(sagUnderLoad(end, bikeLoadN)!.sagMm, bikeSagMm, 1e-9)
      near(sagUnderLoad(end, bikeLoadN + riderLoadN)!.sagMm, bikeSagMm + more, 1e-9)
    }))
  })

  it('tells a preload below zero instead of clipping it: no spring meets both', () => {
    assert.ok(valueOf(get(springForTargets({ bikeLoadN: 100, riderLoadN: 450, bikeSagMm: 12, riderSagMm: 37 })).wheelPreload) < 0)
  })

  it('tells the rate without the bike’s sprung load, and that the preload is missing for it', () => {
    const spring = get(springForTargets({ bikeLoadN: undefined, riderLoadN: 450, bikeSagMm: 12, riderSagMm: 37 }))
    near(spring.wheelRate.value, 18, 1e-12)
    assert.deepEqual(missingOf(spring.wheelPreload), ['bike’s sprung load on this end'])
  })

  it('says what is missing', () => {
    const targets = { bikeLoadN: 700, riderLoadN: 450, bikeSagMm: 12, riderSagMm: 37 }
    assert.deepEqual(missingOf(springForTargets({ ...targets, riderSagMm: undefined })), ['target of rider sag'])
    assert.deepEqual(missingOf(springForTargets({ ...targets, riderSagMm: 12 })), ['a target of rider sag above the one of bike sag'])
    assert.deepEqual(missingOf(springForTargets({ ...targets, riderLoadN: 0 })), ['a rider’s load above zero'])
  })
})
