import { say } from '../words/say'
import { unevenPairs, unevenReport } from './legPairs'
import type { EntryRule } from './rule'

export const legsDiffer: EntryRule = {
  code: 'legs-differ',
  severity: 'warning',
  says: 'The two legs of a pair stand differently.',
  why: 'A matched pair works as one only while both legs stand alike; a difference is most often a miscount.',
  checkEntry: (entry, notebook) =>
    unevenPairs(entry, notebook, (adjuster) => !adjuster.control.mustBeEven).map((pair) =>
      unevenReport(entry, notebook, pair, say`${pair.adjuster.label}: the left leg stands at ${pair.left.node.text}, the right at ${pair.right.node.text}; count both again and set them alike`)),
}
