import type { Adjuster } from '../adjusters/adjuster'
import { cautionsFor } from '../adjusters/cautions'
import { describeTurning } from '../adjusters/describeTurning'
import { howToCount } from '../adjusters/howToCount'
import { neighbourWords } from '../adjusters/together'
import { seenTurning } from '../adjusters/turning'
import { say } from '../words/say'
import type { CardSection, HeadDrawing } from './card'

/** Which way to turn an adjuster, how to count it, and the cautions that belong to it. */
export function turningSections(adjuster: Adjuster): { which: CardSection[]; rest: CardSection[]; drawing?: HeadDrawing } {
  const turning = describeTurning(adjuster)
  const seen = seenTurning(adjuster.faces, adjuster.workedFrom, adjuster.closes)
  const sideways = seen.view === 'side' || seen.view === 'unknown'
  const others = neighbourWords(adjuster)
  const which: CardSection[] = turning
    ? [{ heading: say('Which way'), lines: [turning.in.sentence, turning.out.sentence, ...(turning.nearSide ? [turning.nearSide] : []), ...figureWords(adjuster, turning.in.count), ...unknownView(adjuster)], drawn: true }, ...(others.length > 0 ? [{ heading: say('Two in one place'), lines: others, caution: true }] : [])]
    : []
  const rest = [{ heading: say('How to count it'), lines: [howToCount(adjuster)] }, { heading: say('Take care'), lines: cautionsFor(adjuster).filter((words) => !others.includes(words)), caution: true }]
  if (!turning) return { which, rest }
  return {
    which, rest,
    drawing: { ...(sideways ? {} : { seen: seen.in }), facing: adjuster.closes, viewpoint: turning.viewpoint, text: turning.in.sentence },
  }
}

/** A figure of its own tells whether it was the right way, whatever was thought of the thread: rings with steps run either way. */
function figureWords({ end, counts, control }: Adjuster, count: 'rises' | 'falls'): string[] {
  if (end !== undefined) return []
  const figure = counts.dimension === 'step' ? say('the step’s number') : counts.dimension === 'length' ? say('the length') : say('its figure')
  return [say`For ${say(control.more)} ${figure} ${say(count)}; if it does not, turn it the other way.`]
}

/** A direction that rests on an assumption says so. */
function unknownView({ faces, workedFrom }: Adjuster): string[] {
  if (workedFrom !== undefined && workedFrom !== 'facing' && faces === undefined) return [say('Which way its head faces is not noted (`faces`), so this is as seen facing the head.')]
  return []
}
