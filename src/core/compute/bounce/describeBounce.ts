import { phrase, say } from '../../words/say'
import { overshoot } from './overshoot'

/** What someone may see or feel of an end that was pushed and let go, or on the road. */
export type Seen = 'keepsBouncing' | 'wallows' | 'settlesAtOnce' | 'returnsSlowly' | 'packsDown'

/** What it is called, what it says of the rebound circuit, and who says so. */
export interface BounceMeaning {
  words: string
  rebound: 'more' | 'less' | 'keep'
  source: string
}

const serviceManual = 'a manufacturer’s service manual, suspension tuning table'

/** Rebound damping only: a push by hand is too slow to tell of the rest. */
export const bounceMeanings: Record<Seen, BounceMeaning> = {
  keepsBouncing: { words: phrase('goes on bouncing after it is let go'), rebound: 'more', source: serviceManual },
  wallows: { words: 'wallows', rebound: 'more', source: serviceManual },
  settlesAtOnce: { words: phrase('comes up, passes its rest once and settles'), rebound: 'keep', source: phrase('common practice, no source') },
  returnsSlowly: { words: phrase('creeps back without passing its rest'), rebound: 'less', source: phrase('common practice, no source') },
  packsDown: { words: phrase('packs down over several bumps'), rebound: 'less', source: serviceManual },
}

/** Swings smaller than this share of the push are not seen by eye. Our own choice. */
export const visibleShare = 0.05

/**
 * In plain words what a damping ratio looks like, without a judgement: no published target for a motorcycle was found.
 * @example describeRatio(0.3) // 'swings 37 % past its rest and has settled to 5 % after 4 swings'
 */
export function describeRatio(ratio: number): string | undefined {
  const past = overshoot(ratio)
  if (past === undefined) return undefined
  if (past <= visibleShare) return say('comes back to its rest without passing it visibly')
  if (past === 1) return say('swings on without end')
  const swings = Math.ceil(Math.log(visibleShare) / Math.log(past))
  const [percent, small] = [Math.round(100 * past), 100 * visibleShare]
  return say`swings ${percent} % past its rest and has settled to ${small} % after ${swings} swings`
}
