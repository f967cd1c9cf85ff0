import { found } from '../compute/working/result'
import { endOfLog } from '../derived/logOf'
import { printNumber } from '../notation/amount'
import { measured } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { NotebookRule, Report } from './rule'
import { ends, endWord } from './sagEnds'

/** They may differ by so much: a tie is read by eye and carried on by its own weight. Our own choice. */
const [allowedMm, allowedShare] = [5, 0.05]

export const tieAgainstLog: NotebookRule = {
  code: 'tie-against-log',
  severity: 'warning',
  says: 'The travel used by the tie and by the log differ by more than 5 mm and 5 % of the travel.',
  why: 'Both tell the deepest point of one ride. Where they disagree one of them is wrong, and what is concluded from it too.',
  checkNotebook: (notebook) => (notebook.logs ? notebook.entries.flatMap((entry) => ends.flatMap((end) => reportOf(notebook, entry, end))) : []),
}

function reportOf(notebook: Notebook, entry: Entry, name: (typeof ends)[number]): Report[] {
  const log = found(endOfLog(notebook, entry, name))
  const tie = measured(entry, `ride.${name}_travel_used`)
  if (!log || !tie) return []
  const { travelMm = 0, position: { deepestMm } } = log.end
  const by = tie.base - deepestMm
  if (Math.abs(by) <= Math.max(allowedMm, allowedShare * travelMm)) return []
  const [byTie, byLog] = [printNumber(tie.base, 0), printNumber(deepestMm, 0)]
  const message = by > 0
    ? say`${endWord(name)}: the tie says ${byTie} mm, the log ${byLog} mm: the tie was moved by something else, the deepest place is not in the log, or the logger’s scale or offset is wrong`
    : say`${endWord(name)}: the log says ${byLog} mm, the tie ${byTie} mm: the tie slid back or was read from another place, or the logger’s scale or offset is wrong`
  return [{ message, range: tie.range, entry, row: tie.key }]
}
