import type { Card } from '../card/card'
import { fileUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import { sentence } from '../words/sentence'
import { adviceCaution, adviceHeads, adviceParts, type AdvicePart } from './adviceText'
import { adviseNext } from './adviseNext'

const headings: Record<AdvicePart['name'], string> = { because: phrase('Because'), expect: phrase('What to expect'), assumes: phrase('Assumes') }

/** The one next step after an entry as a card: the same sentences as the command line's, laid out to be read. */
export function adviceCard(notebook: Notebook, entry: Entry, units = fileUnits): Card {
  const advice = adviseNext(notebook, entry, units)
  return {
    title: say`What next, after ${entry.key}?`,
    sections: [
      { heading: say(adviceHeads[advice.kind]), lines: [sentence(say(advice.step))] },
      ...adviceParts(advice).map(({ name, lines }) => ({ heading: say(headings[name]), lines: lines.map((line) => say(line)) })),
      ...(advice.kind === 'change' ? [{ heading: say('Take care'), lines: [say(adviceCaution)], caution: true }] : []),
    ],
  }
}
