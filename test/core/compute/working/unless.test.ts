import assert from 'node:assert/strict'
import { frontOverRear } from '../../../../src/core/compute/bounce/compareEnds'
import { raiseAtWheel } from '../../../../src/core/compute/geometry/raiseAtWheel'
import { frontShare } from '../../../../src/core/compute/loads/frontShare'
import { riderFrontShare } from '../../../../src/core/compute/loads/riderShare'
import { ratioProgress } from '../../../../src/core/compute/leverage/progressivity'
import { compareRates } from '../../../../src/core/compute/springs/compareRates'
import { meanRate } from '../../../../src/core/compute/springs/meanRate'
import { targetRate } from '../../../../src/core/compute/springs/targetRate'
import { verticalRate } from '../../../../src/core/compute/springs/verticalRate'
import { isMissing, type Outcome, type Result } from '../../../../src/core/compute/working/result'

const missing = (outcome: Outcome<object>): string => (isMissing(outcome) ? outcome.missing.join() : 'nothing')
const valueOf = (outcome: Outcome<Result>): number => (isMissing(outcome) ? NaN : outcome.value)

describe('a calculation that a figure makes senseless', () => {
  it('names that figure, from nought on', () => {
    for (const nought of [0, -1]) {
      assert.equal(missing(compareRates({ impliedNPerMm: 9, fittedNPerMm: nought })), 'a fitted rate above zero')
      assert.equal(missing(raiseAtWheel({ shockLongerMm: 3, motionRatio: nought })), 'a motion ratio above zero')
      assert.equal(missing(frontOverRear({ name: 'rate', unit: 'N/mm', front: 9, rear: nought })), 'rate of the rear above zero')
      assert.equal(missing(riderFrontShare({ frontWithKg: 120, frontWithoutKg: 90, riderKg: nought })), 'a rider’s mass above zero')
      assert.equal(missing(targetRate({ riderLoadN: nought, bikeSagMm: 20, riderSagMm: 30 })), 'a rider’s load above zero')
    }
    for (const rakeDeg of [90, -90, 120]) assert.equal(missing(verticalRate({ rateAlongTubesNPerMm: 9, rakeDeg })), 'a rake below 90°')
    for (const riderSagMm of [20, 19]) assert.equal(missing(targetRate({ riderLoadN: 300, bikeSagMm: 20, riderSagMm })), 'a target of rider sag above the one of bike sag')
  })

  it('takes an axle that carries nothing, but not both, nor one below nought', () => {
    const share = (frontKg: number, rearKg: number) => frontShare({ frontKg, rearKg, whose: 'bike' })
    assert.deepEqual([valueOf(share(0, 90)), valueOf(share(90, 0)), valueOf(share(45, 45))], [0, 100, 50])
    for (const [front, rear] of [[0, 0], [-1, 90], [90, -1]] as const) assert.equal(missing(share(front, rear)), 'axle weights above zero')
  })
})

describe('meanRate', () => {
  const rate = (toMm: number, rake?: number) =>
    meanRate({ force1N: 400, force2N: 700, fromMm: 20, toMm, ...(rake === undefined ? {} : { rakeDeg: { value: rake } }), assumptions: ['springs alone'] })

  it('is the slope of the force between both sags, in a fork over the cosine of the rake', () => {
    assert.equal(valueOf(rate(40)), 15)
    assert.ok(Math.abs(valueOf(rate(40, 60)) - 30) < 1e-9)
  })

  it('wants the rider’s sag above the bike’s', () => {
    for (const toMm of [20, 19]) assert.equal(missing(rate(toMm)), 'a rider sag above the bike’s')
  })

  it('names what is not known, the rake only where there is one to know', () => {
    assert.match(missing(meanRate({ force1N: undefined, force2N: 700, fromMm: 20, toMm: undefined, rakeDeg: { value: undefined }, assumptions: [] })), /^force of the springs, bike alone,rider sag,rake$/)
  })
})

describe('ratioProgress', () => {
  it('is the rise of the motion ratio in percent of the one at the top, below nought for a falling one', () => {
    const of = (ratioAtTop: number, ratioAtEnd: number) => Math.round(valueOf(ratioProgress({ ratioAtTop, ratioAtEnd })))
    assert.deepEqual([of(0.5, 0.6), of(0.5, 0.4), of(0.5, 0.5)], [20, -20, 0])
  })
})
