import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import { reportsOfLogs, type EndOfLog } from './logReports'
import type { NotebookRule } from './rule'
import { endWord } from './sagEnds'

/** Two thirds of the travel, and a log of at least a minute: a shorter one says nothing of a ride. Common practice, no source. */
const [share, leastS] = [200 / 3, 60]

export const travelLeftOver: NotebookRule = {
  code: 'travel-left-over',
  severity: 'info',
  says: 'The log of a minute or more never goes past two thirds of an end’s travel.',
  why: 'Travel that is never used is paid for in comfort and grip. That two thirds are little is common practice; an easy ride explains it as well.',
  checkNotebook: (notebook) => reportsOfLogs(notebook, 'deepest_pct', words),
}

function words({ name, end: { travelMm, position: { deepestMm, deepestPct } }, log: { statistics: { sampling } } }: EndOfLog): string | undefined {
  if (travelMm === undefined || deepestPct === undefined || deepestPct >= share || sampling.toS - sampling.fromS < leastS) return undefined
  return say`${endWord(name)}: never past two thirds of the travel in this log (${printNumber(deepestMm, 0)} of ${printNumber(travelMm, 0)} mm): fine if the ride was an easy one, else check that it moves freely, then sag, spring, oil and compression damping`
}
