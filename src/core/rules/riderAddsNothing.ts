import type { End } from '../compute/sag/loadCase'
import { axleMassOf } from '../derived/loadsOf'
import { printNumber } from '../notation/amount'
import { factAt, factIn, isWeighed, type Fact } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { NotebookRule, Report } from './rule'
import { ends, endWord } from './sagEnds'

export const riderAddsNothing: NotebookRule = {
  code: 'rider-adds-nothing',
  severity: 'error',
  says: 'An axle carries no more with the rider aboard than without.',
  why: 'A rider only adds load. The two weighings stand in each other’s place, or one was read wrong; no rate can be taken from them.',
  checkNotebook: (notebook) => ends.flatMap((end) => [
    ...inMachine(notebook, end),
    ...notebook.entries.filter(({ node }) => isWeighed(node)).flatMap((entry) => inEntry(notebook, entry, end)),
  ]),
}

function inMachine(notebook: Notebook, end: End): Report[] {
  const [aboard, alone] = (['rider', 'bike'] as const).map((load) => factAt(notebook, ['machine', 'axle_loads', load, end], 'mass'))
  return aboard && alone && aboard.base <= alone.base ? [{ message: messageOf(end, aboard.base, alone.base), range: aboard.range }] : []
}

/** Where an entry has one of the weighings, against what it has or the machine has of the other. */
function inEntry(notebook: Notebook, entry: Entry, end: End): Report[] {
  const written = (load: string): Fact | undefined => factIn(entry.node, ['axle_loads', load, end], 'mass')
  const at = written('rider') ?? written('bike')
  const [aboard, alone] = [axleMassOf(notebook, entry, 'rider', end), axleMassOf(notebook, entry, 'bike', end)]
  return at && aboard !== undefined && alone !== undefined && aboard <= alone ? [{ message: messageOf(end, aboard, alone), range: at.range, entry }] : []
}

const messageOf = (end: End, aboard: number, alone: number) =>
  say`${endWord(end)}: ${printNumber(aboard, 1)} kg with the rider aboard is not more than ${printNumber(alone, 1)} kg without; weigh again, or see whether the two stand in each other’s place`
