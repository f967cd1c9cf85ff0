import assert from 'node:assert/strict'
import fc from 'fast-check'
import { judgeSpring } from '../../../../src/core/compute/preload/judgeSpring'

const windows = { bikeWindow: { lowMm: 10, highMm: 15 }, riderWindow: { lowMm: 30, highMm: 35 } }
const judge = (bike: number, rider: number) => judgeSpring({ bikeSagMm: { value: bike }, riderSagMm: { value: rider }, ...windows })

describe('judgeSpring', () => {
  it('finds that a spring fits when both sags are right', () => {
    const { verdict, preloadFirst, bikeSagThenMm } = judge(12, 33)
    assert.deepEqual([verdict, preloadFirst, bikeSagThenMm], ['fits', undefined, 12])
  })

  const corners = [
    ['both large: more preload, and the spring fits', 20, 42, 'fits', 'more'],
    ['both small: less preload, and the spring fits', 4, 24, 'fits', 'less'],
    ['bike small, rider large: too soft', 5, 45, 'tooSoft', 'more'],
    ['bike large, rider small: too stiff', 20, 25, 'tooStiff', 'less'],
    ['rider right, bike small: too soft, held up by preload', 4, 33, 'tooSoft', undefined],
    ['rider right, bike large: too stiff', 22, 33, 'tooStiff', undefined],
  ] as const
  for (const [corner, bike, rider, verdict, preloadFirst] of corners) {
    it(`two-sag rule, ${corner}`, () => {
      const judgement = judge(bike, rider)
      assert.deepEqual([judgement.verdict, judgement.preloadFirst], [verdict, preloadFirst])
    })
  }

  it('trap, all-offroad: too little rider sag alone does not make a spring too stiff', () => {
    const judgement = judge(4, 24)
    assert.notEqual(judgement.verdict, 'tooStiff')
    assert.equal(judgement.preloadFirst, 'less')
  })

  it('G19, sasquatchrider after Thede & Parks: much preload to get the rider sag means too soft, hardly any too stiff', () => {
    const sags = (rate: number, preload: number) => judge(900 / rate - preload, 1350 / rate - preload).verdict
    const preloadFor = (rate: number) => 1350 / rate - 33
    assert.equal(sags(14, preloadFor(14)), 'tooSoft')
    assert.equal(sags(21.5, preloadFor(21.5)), 'fits')
    assert.equal(sags(30, preloadFor(30)), 'tooStiff')
  })

  it('does not judge by a bike that stands on its top stop when preload has to come off', () => {
    assert.equal(judge(0, 18).verdict, 'unknown')
    assert.equal(judge(0, 28).verdict, 'tooSoft')
  })

  it('is not moved by preload while neither sag tops out and the rider sag is outside its window on the same side', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(fc.property(number(8, 45), number(1, 40), number(0, 10), (bike, difference, less) => {
      fc.pre(bike + difference > 35.001)
      return judge(bike, bike + difference).verdict === judge(bike + less, bike + difference + less).verdict
    }))
  })

  it('is unsure where the readings leave it open', () => {
    const judgement = judgeSpring({ bikeSagMm: { value: 9.5, u: 0.7 }, riderSagMm: { value: 33, u: 0.7 }, ...windows })
    assert.deepEqual([judgement.verdict, judgement.then.sure], ['tooSoft', false])
  })
})
