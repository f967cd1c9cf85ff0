import assert from 'node:assert/strict'
import type { Adjuster } from '../../../src/core/adjusters/adjuster'
import { cautionsFor } from '../../../src/core/adjusters/cautions'
import { controls } from '../../../src/core/adjusters/controls'
import { isTurned } from '../../../src/core/adjusters/describeTurning'
import { howToCount } from '../../../src/core/adjusters/howToCount'
import { units } from '../../../src/core/notation/units'
import { anAdjuster } from './anAdjuster'

const every: Adjuster[] = controls.flatMap((control) => units.filter((unit) => control.suits.includes(unit.dimension)).flatMap((unit) => {
  const adjuster = anAdjuster(control.name, unit.symbol)
  const ownScale = { ...adjuster, higherIs: 'less' as const }
  delete ownScale.end
  return [adjuster, { ...adjuster, end: 'closed' as const }, { ...adjuster, end: 'open' as const }, ownScale]
}))

// Sources of the sentences, beside common practice: the first click is 1 (J. Siddall, The Basics); the seat and the first
// click may be the same position (YZF-R6 2023 owner's manual, p. 5-24); close it first and then count (fork owner's manual
// 07295-27); oil with the fork compressed and the spring out (Z750 2003 service manual, p. 13-9); fork height from flush
// (CRF250R owner's manual, p. 107). Cautions: force at either end damages the valves (H-D service pages, NOTICE 00237a);
// gas under pressure (YZF-R1 2023 owner's manual); uneven legs (YXZ1000R manual, p. 4-35); over-tight pinch bolts
// (J. Siddall); wheel off the ground for fork air (CR250R 2004 owner's manual, p. 70); the locknut's torque (YZF-R6 2023).
describe('how to count', () => {
  it('is told for everything that suits, in whole sentences', () => {
    for (const adjuster of every) {
      const words = howToCount(adjuster)
      assert.match(words, /^[A-Z].*\.$/, adjuster.id)
      assert.doesNotMatch(words, /undefined| {2}/, adjuster.id)
    }
  })

  it('never lets anything that is turned be forced', () => {
    for (const adjuster of every) assert.equal(/Never force it\./.test(howToCount(adjuster)), isTurned(adjuster), `${adjuster.id} ${adjuster.counts.symbol}`)
  })

  it('closes damping lightly and counts out, and backs preload off and counts in', () => {
    assert.match(howToCount(anAdjuster('rebound', 'clicks')), /in, lightly, until it seats, counting the clicks: .* how far out .* back out by the same count\. The first click out is 1/)
    assert.match(howToCount(anAdjuster('compression', 'turns')), /lightly.*quarters/)
    assert.match(howToCount(anAdjuster('preload', 'turns')), /Back it off fully.* how far in .* back in by the same count\. Fully backed off is 0/)
    assert.match(howToCount(anAdjuster('preload', 'flats')), /six flats/)
  })

  it('counts the rings that show, reads a dial, and finds step 1 by what it gives', () => {
    assert.match(howToCount(anAdjuster('preload', 'rings')), /rings that show.*fewer show/)
    assert.match(howToCount(anAdjuster('rebound', 'dial')), /number/)
    assert.match(howToCount(anAdjuster('preload', 'steps', { higherIs: 'more' })), /least spring preload, which is step 1/)
    assert.match(howToCount(anAdjuster('preload', 'steps', { higherIs: 'less' })), /most spring preload, which is step 1/)
  })

  it('says of a set length which way it counts', () => {
    for (const [higherIs, expected] of [['more', /longer is more preload/], ['less', /longer is less preload/]] as const) {
      const collar = anAdjuster('preload', 'mm', { higherIs })
      delete collar.end
      assert.match(howToCount(collar), expected)
    }
  })

  it('never says that preload changes the spring’s rate', () => {
    for (const adjuster of every.filter((each) => each.control.name === 'preload')) {
      assert.doesNotMatch([howToCount(adjuster), ...cautionsFor(adjuster)].join(' '), /stiff|soft|hard|firm|rate/)
    }
  })
})

describe('the cautions', () => {
  const said = (adjuster: Adjuster) => cautionsFor(adjuster).join(' ')

  it('are there for everything, in whole sentences', () => {
    for (const adjuster of every) {
      assert.ok(cautionsFor(adjuster).length > 0, adjuster.id)
      for (const words of cautionsFor(adjuster)) assert.match(words, /^[A-Z].*\.$/)
    }
  })

  it('of fork height: alike on both sides first, then the torque and the clearance', () => {
    const words = said(anAdjuster('fork_height', 'mm', { legs: ['left', 'right'] }))
    assert.match(words, /^Both tubes stand alike.*torque the pinch bolts.*clearance of tyre, brake hoses, fender and steering stop/)
  })

  it('of damping: seat it lightly; of a shock: never open it', () => {
    assert.match(said(anAdjuster('rebound', 'clicks')), /Seat it lightly/)
    assert.doesNotMatch(said(anAdjuster('rebound', 'clicks')), /gas-charged/)
    assert.match(said(anAdjuster('rebound', 'clicks', { on: 'shock' })), /gas-charged: never open/)
  })

  it('of air: wheel off the ground', () => {
    assert.match(said(anAdjuster('air_pressure', 'psi')), /wheel off the ground/)
    assert.match(said(anAdjuster('balance_pressure', 'psi')), /wheel off the ground/)
  })

  it('of what holds it: the locknut’s torque, a worn detent, nothing but friction', () => {
    assert.match(said(anAdjuster('preload', 'turns', { heldBy: 'locknut' })), /locknut.*torque/)
    assert.match(said(anAdjuster('rebound', 'clicks', { heldBy: 'ball', condition: 'worn' })), /is worn/)
    assert.match(said(anAdjuster('preload', 'turns', { heldBy: 'friction' })), /No detent/)
    assert.doesNotMatch(said(anAdjuster('rebound', 'clicks', { heldBy: 'ball', condition: 'good' })), /worn|detent|locknut/)
  })

  it('of a pair: both sides alike', () => {
    assert.match(said(anAdjuster('rebound', 'clicks', { legs: ['left', 'right'] })), /both legs of a pair alike/)
    assert.doesNotMatch(said(anAdjuster('rebound', 'clicks', { legs: ['left'] })), /both sides/)
  })
})
