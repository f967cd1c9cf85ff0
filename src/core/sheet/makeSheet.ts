import { oneLine } from '../compare/oneLine'
import { cautions } from '../grid/cautions'
import { fileUnits, sayIn, type DisplayUnits } from '../notation/displayUnits'
import { factAt, wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import { checkNotebook } from '../rules/checkNotebook'
import { say } from '../words/say'
import type { Sheet } from './sheet'
import { sheetMeasures } from './sheetMeasures'
import { sheetPositions } from './sheetPositions'
import { sheetWatch } from './sheetWatch'

/** The hand-over sheet of a state: what stands on one page. `findings` are those of the notebook, where they are known already. */
export function makeSheet(notebook: Notebook, entry: Entry, units: DisplayUnits = fileUnits, findings = checkNotebook(notebook)): Sheet {
  const notes = scalarAt(entry.node, ['notes'])?.text.trim()
  const marks = [entry.from && say`from ${entry.from.value}`, entry.asFound && say('as found'), entry.baseline && say('baseline')].filter((mark) => typeof mark === 'string')
  return {
    machine: oneLine(wordsAt(notebook, ['machine', 'name']) ?? '') || say('a machine without a name'),
    about: aboutWords(notebook, units),
    entry: oneLine(entry.key), ...(entry.date ? { date: oneLine(entry.date.value) } : {}), marks: marks.map(oneLine),
    ...(entry.reason?.value.trim() ? { reason: entry.reason.value.trim() } : {}), ...(notes ? { notes } : {}),
    positions: sheetPositions(notebook, entry), measures: sheetMeasures(notebook, entry, units), watch: sheetWatch(findings, entry, notebook.adjusters.values()), cautions: cautions.map((words) => say(words)),
  }
}

function aboutWords(notebook: Notebook, units: DisplayUnits): string[] {
  const [use, rider] = [wordsAt(notebook, ['machine', 'use']), wordsAt(notebook, ['rider', 'name'])]
  const mass = factAt(notebook, ['rider', 'kitted_mass'], 'mass')
  const who = [rider, mass && say`${sayIn(units)(mass.base, 'kg', 0)} in kit`].filter(Boolean).join(', ')
  return [use, who && say`rider ${who}`].filter((words) => typeof words === 'string' && words !== '').map((words) => oneLine(words as string))
}
