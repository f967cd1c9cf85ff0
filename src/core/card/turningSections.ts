import type { Adjuster } from '../adjusters/adjuster'
import { cautionsFor } from '../adjusters/cautions'
import { describeTurning } from '../adjusters/describeTurning'
import { howToCount } from '../adjusters/howToCount'
import { neighbourWords } from '../adjusters/together'
import { seenTurning } from '../adjusters/turning'
import type { CardSection, HeadDrawing } from './card'

/** Which way to turn an adjuster, how to count it, and the cautions that belong to it. */
export function turningSections(adjuster: Adjuster): { which: CardSection[]; rest: CardSection[]; drawing?: HeadDrawing } {
  const turning = describeTurning(adjuster)
  const seen = seenTurning(adjuster.faces, adjuster.workedFrom, adjuster.closes)
  const sideways = seen.view === 'side' || seen.view === 'unknown'
  const others = neighbourWords(adjuster)
  const which: CardSection[] = turning
    ? [{ heading: 'Which way', lines: [turning.in.sentence, turning.out.sentence, ...(turning.nearSide ? [turning.nearSide] : []), ...figureWords(adjuster, turning.in.count), ...unknownView(adjuster)], drawn: true }, ...(others.length > 0 ? [{ heading: 'Two in one place', lines: others, caution: true }] : [])]
    : []
  const rest = [{ heading: 'How to count it', lines: [howToCount(adjuster)] }, { heading: 'Take care', lines: cautionsFor(adjuster).filter((words) => !others.includes(words)), caution: true }]
  if (!turning) return { which, rest }
  return {
    which, rest,
    drawing: { ...(sideways ? {} : { seen: seen.in }), facing: adjuster.closes, viewpoint: turning.viewpoint, text: turning.in.sentence },
  }
}

/** A figure of its own tells whether it was the right way, whatever was thought of the thread: rings with steps run either way. */
function figureWords({ end, counts, control }: Adjuster, count: 'rises' | 'falls'): string[] {
  if (end !== undefined) return []
  const figure = counts.dimension === 'step' ? 'the step’s number' : counts.dimension === 'length' ? 'the length' : 'its figure'
  return [`For ${control.more} ${figure} ${count}; if it does not, turn it the other way.`]
}

/** A direction that rests on an assumption says so. */
function unknownView({ faces, workedFrom }: Adjuster): string[] {
  if (workedFrom !== undefined && workedFrom !== 'facing' && faces === undefined) return ['Which way its head faces is not noted (`faces`), so this is as seen facing the head.']
  return []
}
