import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import { reportsOfLogs, type EndOfLog } from './logReports'
import type { NotebookRule } from './rule'
import { endWord } from './sagEnds'

/** So many runs of quick hits, and such a share of all of them, make a pattern. Our own choice. */
const [fewest, share] = [3, 0.25]

export const packingDown: NotebookRule = {
  code: 'packing-down',
  severity: 'info',
  says: 'The log shows an end that sits deeper from hit to hit in at least three runs of quick hits, and a quarter of them.',
  why: 'Rebound damping that is too slow for quick hits lets the end come out less and less far, until it is low and hard. That is common practice without a published figure; what counts as a run stands with the number.',
  checkNotebook: (notebook) => reportsOfLogs(notebook, 'packed', words),
}

function words({ name, end: { packing } }: EndOfLog): string | undefined {
  const first = packing?.places[0]
  if (!packing || !first || packing.packed < fewest || packing.packed < share * packing.trains) return undefined
  return say`${endWord(name)}: packs down in ${packing.packed} of ${packing.trains} runs of quick hits, by up to ${printNumber(packing.worstMm, 0)} mm, first at ${printNumber(first.atS, 1)} s: try a little less rebound damping, and compare`
}
