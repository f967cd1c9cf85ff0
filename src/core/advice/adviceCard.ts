import type { Card } from '../card/card'
import { fileUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { adviceCaution, adviceHeads, adviceParts, type AdvicePart } from './adviceText'
import { adviseNext } from './adviseNext'

const headings: Record<AdvicePart['name'], string> = { because: 'Because', expect: 'What to expect', assumes: 'Assumes' }

/** The one next step after an entry as a card: the same sentences as the command line's, laid out to be read. */
export function adviceCard(notebook: Notebook, entry: Entry, units = fileUnits): Card {
  const advice = adviseNext(notebook, entry, units)
  return {
    title: `What next, after ${entry.key}?`,
    sections: [
      { heading: adviceHeads[advice.kind], lines: [`${advice.step[0]!.toUpperCase()}${advice.step.slice(1)}.`] },
      ...adviceParts(advice).map(({ name, lines }) => ({ heading: headings[name], lines: [...lines] })),
      ...(advice.kind === 'change' ? [{ heading: 'Take care', lines: [adviceCaution], caution: true }] : []),
    ],
  }
}
