import { say } from '../../words/say'
import type { End } from './loadCase'

/** What another rider sag does to how a machine steers, and who says so. */
export interface SagFeel {
  words: string
  source: string
}

const handbook = 'a manufacturer’s owner’s manual of 2006, p. 120'

/**
 * How a machine steers with less or with more rider sag at the rear than before; nothing was found in print for the front.
 * Source: a manufacturer’s owner’s manual of 2006 (90 mm against 110 mm of a motocross machine).
 */
export function sagFeel(end: End, sag: 'less' | 'more'): SagFeel | undefined {
  if (end === 'front') return undefined
  return {
    less: { words: say('it turns quicker in the tight and is slightly less stable in a straight line'), source: handbook },
    more: { words: say('it is more stable in a straight line and turns slower'), source: handbook },
  }[sag]
}
