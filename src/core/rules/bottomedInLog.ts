import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import { reportsOfLogs, type EndOfLog } from './logReports'
import type { NotebookRule } from './rule'
import { endWord } from './sagEnds'

export const bottomedInLog: NotebookRule = {
  code: 'bottomed-in-log',
  severity: 'info',
  says: 'The log of a ride shows an end on its stop.',
  why: 'An end on its stop springs no more, and the tyre takes the rest. Once at the hardest place of a ride is as it should be; more is for sag, spring, oil and compression damping, in that order.',
  checkNotebook: (notebook) => reportsOfLogs(notebook, 'bottomed', words),
}

function words({ name, end: { bottoming } }: EndOfLog): string | undefined {
  const first = bottoming?.places[0]
  if (!bottoming || !first) return undefined
  const [atS, withinMm] = [printNumber(first.atS, 1), printNumber(bottoming.withinMm, 1)]
  if (bottoming.times === 1) return say`${endWord(name)}: the log shows it on its stop once, at ${atS} s (within ${withinMm} mm): as it should be if that was the hardest place of the ride`
  return say`${endWord(name)}: the log shows it on its stop ${bottoming.times} times, first at ${atS} s (within ${withinMm} mm): look at sag, spring, oil and compression damping, in that order`
}
