import { bounceMeanings, describeRatio, visibleShare } from '../compute/bounce/describeBounce'
import { ratioFromOvershoot } from '../compute/bounce/overshoot'
import type { End } from '../compute/sag/loadCase'
import { found, isMissing } from '../compute/working/result'
import { dampingRatioOf } from '../derived/bounceOf'
import { printNumber } from '../notation/amount'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Advice, Advisor } from './advice'
import { evidenceFor } from './sagEvidence'
import { smallMove } from './smallMove'

/** An overshoot of more than half the push goes on bouncing; none that can be seen creeps back. Our own choice. */
const goesOnAbove = 0.5
const reboundControls = ['rebound', 'low_speed_rebound']

/** Rebound by the bounce test, front first: it is the one thing of damping that a hand can tell. */
export const tuneRebound: Advisor = (notebook, entry) => {
  const damped = (['front', 'rear'] as const).filter((end) => hasRebound(notebook, end))
  if (damped.length === 0) return undefined
  const read = damped.map((end) => [end, evidenceFor(notebook, entry, end, reboundControls, (at) => !isMissing(dampingRatioOf(notebook, at, end)))] as const)
  for (const [end, at] of read) {
    const advice = at && reboundAt(notebook, entry, at, end)
    if (advice) return advice
  }
  return read.some(([, at]) => at) ? undefined : {
    topic: 'rebound', kind: 'measure', step: say('push each end down once, let go, and write down how high it swings: below, above, below; a film helps'),
    evidence: [say('no bounce test since the rebound was last changed')], expect: [say('a damping ratio for each end, to compare')], assumes: [],
  }
}

function hasRebound({ adjusters }: Notebook, end: End): boolean {
  return [...adjusters.values()].some(({ on, control }) => on === (end === 'front' ? 'fork' : 'shock') && reboundControls.includes(control.name))
}

function reboundAt(notebook: Notebook, entry: Entry, at: Entry, end: End): Advice | undefined {
  const ratio = found(dampingRatioOf(notebook, at, end))
  if (!ratio) return undefined
  const [low, high] = [ratioFromOvershoot(goesOnAbove)!, ratioFromOvershoot(visibleShare)!]
  const seen = ratio.value < low ? 'keepsBouncing' : ratio.value > high ? 'returnsSlowly' : undefined
  const meaning = seen && bounceMeanings[seen]
  if (!meaning || meaning.rebound === 'keep') return undefined
  const move = smallMove(notebook, entry, end, reboundControls, meaning.rebound)
  if (!move) return undefined
  return {
    topic: 'rebound', kind: 'change', step: say`try ${say(meaning.rebound)} rebound damping by the smallest step: ${move}`,
    evidence: [say`${at.key}: the ${say(end)} ${say(meaning.words)}; it ${describeRatio(ratio.value) ?? ''} (damping ratio ${printNumber(ratio.value, 2)}; ${say(meaning.source)})`],
    expect: [say`a damping ratio between ${printNumber(low, 2)} and ${printNumber(high, 2)}: it passes its rest once or twice and settles`],
    assumes: ratio.working.assumptions,
  }
}
