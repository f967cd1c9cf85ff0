import { say } from '../words/say'
import { unevenPairs, unevenReport } from './legPairs'
import type { EntryRule } from './rule'

export const forkHeightUneven: EntryRule = {
  code: 'fork-height-uneven',
  severity: 'error',
  says: 'The fork tubes stand at different heights in the clamps.',
  why: 'Tubes at different heights twist the front end and bind the axle. Stop, and measure both again before riding.',
  checkEntry: (entry, notebook) =>
    unevenPairs(entry, notebook, (adjuster) => adjuster.control.mustBeEven === true).map((pair) =>
      unevenReport(entry, notebook, pair, say`Stop: ${pair.adjuster.label} is ${pair.left.node.text} left and ${pair.right.node.text} right. Measure both again and set them alike before riding.`)),
}
