import assert from 'node:assert/strict'
import { planPreload } from '../../../../src/core/compute/preload/planPreload'
import { get, missingOf, near } from '../near'

const riderWindow = { lowMm: 30, highMm: 36, source: 'a test' }
const bikeWindow = { lowMm: 10, highMm: 16, source: 'a test' }
const adjuster = { at: 4, mmPerCount: 1, lowest: 0, highest: 12, step: 0.5 }

describe('planPreload', () => {
  it('brings the rider sag to the middle of its window and says what both sags become', () => {
    const plan = get(planPreload({ bikeSagMm: { value: 18 }, riderSagMm: { value: 38 }, riderWindow, motionRatio: 1, adjuster }))
    assert.deepEqual([plan.for, plan.needed, plan.toMiddle.value], ['rider', 'more', 5])
    assert.equal(plan.move?.to, 9)
    assert.deepEqual(plan.after, { bikeMm: 13, riderMm: 33, toppingOut: [] })
    assert.deepEqual(plan.limits, [])
  })

  it('needs nothing inside the window, and leaves both sags as they are', () => {
    const plan = get(planPreload({ bikeSagMm: { value: 14 }, riderSagMm: { value: 34 }, riderWindow, motionRatio: 0.5, adjuster }))
    assert.deepEqual([plan.needed, plan.move, plan.after.riderMm, plan.toMiddle.value], ['none', undefined, 34, 0.5])
  })

  it('goes by the bike alone where nobody sat on it', () => {
    const plan = get(planPreload({ bikeSagMm: { value: 8 }, bikeWindow, motionRatio: 0.5, adjuster }))
    assert.deepEqual([plan.for, plan.needed, plan.move?.byCounts], ['bike', 'less', -2.5])
  })

  it('stops where the adjuster ends and says that the spring is too soft or too stiff', () => {
    const soft = get(planPreload({ bikeSagMm: { value: 25 }, riderSagMm: { value: 52 }, riderWindow, motionRatio: 1, adjuster }))
    assert.deepEqual([soft.move?.to, soft.after.riderMm], [12, 44])
    assert.match(soft.limits.join(), /range ends 8\.0 mm of sag short: the spring is too soft/)
    const stiff = get(planPreload({ bikeSagMm: { value: 5 }, riderSagMm: { value: 20 }, riderWindow, motionRatio: 1, adjuster }))
    assert.match(stiff.limits.join(), /too stiff/)
  })

  it('says when the bike alone would top out', () => {
    const plan = get(planPreload({ bikeSagMm: { value: 4 }, riderSagMm: { value: 38 }, riderWindow, motionRatio: 1, adjuster }))
    assert.deepEqual(plan.after.toppingOut, ['bike'])
    assert.match(plan.limits.join(), /top stop/)
  })

  it('says when the steps are too coarse for the window', () => {
    const plan = get(planPreload({ riderSagMm: { value: 37 }, riderWindow: { ...riderWindow, lowMm: 34 }, motionRatio: 1, adjuster: { ...adjuster, step: 6 } }))
    assert.match(plan.limits.join(), /too coarse/)
  })

  it('works without an adjuster, in mm', () => {
    const plan = get(planPreload({ riderSagMm: { value: 38, u: 0.7 }, riderWindow, motionRatio: 1 }))
    assert.deepEqual([plan.move, plan.after.riderMm], [undefined, 33])
    near(plan.toMiddle.u, 0.7, 1e-9)
  })

  it('says what is missing', () => {
    assert.deepEqual(missingOf(planPreload({ motionRatio: 1 })), ['a sag, with the rider or of the bike alone'])
    assert.deepEqual(missingOf(planPreload({ riderSagMm: { value: 38 }, motionRatio: 1 })), ['a window for the sag'])
    assert.deepEqual(missingOf(planPreload({ bikeSagMm: { value: 8 }, riderWindow, motionRatio: 1 })), ['a window for the sag'])
    assert.deepEqual(missingOf(planPreload({ bikeWindow, riderWindow, motionRatio: 1 })), ['a sag, with the rider or of the bike alone'])
    assert.deepEqual(missingOf(planPreload({ riderSagMm: { value: 38 }, riderWindow, motionRatio: undefined })), ['motion ratio, spring to sag'])
  })
})
