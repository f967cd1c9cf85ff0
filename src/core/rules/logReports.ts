import type { End } from '../compute/sag/loadCase'
import { found } from '../compute/working/result'
import { endOfLog } from '../derived/logOf'
import type { ReadLog } from '../logs/atHand'
import type { EndStatistics } from '../logs/statistics/logStatistics'
import { fieldNode } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Report } from './rule'
import { ends } from './sagEnds'

/** One end of the log of an entry. */
export interface EndOfLog {
  entry: Entry
  name: End
  end: EndStatistics
  log: ReadLog
}

/**
 * What a rule has to say of every end of every log at hand. It is told at the entry's `log:` and, in the grid, at the row
 * of that end whose name it is given: `bottomed` for `log.front_bottomed`. Logs come and go without a change of the
 * text, so such a rule is no rule for entries, whose reports are kept.
 */
export function reportsOfLogs(notebook: Notebook, row: string, say: (of: EndOfLog) => string | undefined): Report[] {
  if (!notebook.logs) return []
  return notebook.entries.flatMap((entry) => ends.flatMap((name): Report[] => {
    const of = found(endOfLog(notebook, entry, name))
    const node = fieldNode(entry, 'ride.log')
    const message = of && node && say({ entry, name, ...of })
    return message ? [{ message, range: node.range, entry, row: `computed/log.${name}_${row}` }] : []
  }))
}
