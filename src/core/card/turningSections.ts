import type { Adjuster } from '../adjusters/adjuster'
import { cautionsFor } from '../adjusters/cautions'
import { describeTurning } from '../adjusters/describeTurning'
import { howToCount } from '../adjusters/howToCount'
import { seenTurning } from '../adjusters/turning'
import type { CardSection, HeadDrawing } from './card'

/** Which way to turn an adjuster, how to count it, and the cautions that belong to it. */
export function turningSections(adjuster: Adjuster): { sections: CardSection[]; drawing?: HeadDrawing } {
  const turning = describeTurning(adjuster)
  const seen = seenTurning(adjuster.faces, adjuster.workedFrom, adjuster.closes)
  const sideways = seen.view === 'side' || seen.view === 'unknown'
  const which: CardSection[] = turning ? [{ heading: 'Which way', lines: [turning.in.sentence, turning.out.sentence, ...unknownView(adjuster)] }] : []
  const sections = [...which, { heading: 'How to count it', lines: [howToCount(adjuster)] }, { heading: 'Take care', lines: cautionsFor(adjuster), caution: true }]
  if (!turning) return { sections }
  return {
    sections,
    drawing: { ...(sideways ? {} : { seen: seen.in }), facing: adjuster.closes, viewpoint: turning.viewpoint, text: turning.in.sentence },
  }
}

/** A direction that rests on an assumption says so. */
function unknownView({ faces, workedFrom }: Adjuster): string[] {
  if (workedFrom !== undefined && workedFrom !== 'facing' && faces === undefined) return ['Which way its head faces is not noted (`faces`), so this is as seen facing the head.']
  return []
}
