import { sharedRiderLoad, weighedRiderLoad } from '../compute/loads/riderLoad'
import { sprungLoad } from '../compute/loads/sprungLoad'
import type { End, LoadCase } from '../compute/sag/loadCase'
import { isMissing, type Outcome } from '../compute/working/result'
import { factAt, factIn } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { perEntry, perNotebook } from './perEntry'

/** What scales under one wheel read, kg: this entry's weighing, else the machine's. A rider may weigh in for one entry alone. */
export function axleMassOf(notebook: Notebook, entry: Entry, load: LoadCase, end: End): number | undefined {
  const kg = (factIn(entry.node, ['axle_loads', load, end], 'mass') ?? factAt(notebook, ['machine', 'axle_loads', load, end], 'mass'))?.base
  return kg !== undefined && kg > 0 ? kg : undefined
}

/** The rider's mass with all they ride in, kg. */
export function riderMassOf(notebook: Notebook): number | undefined {
  return factAt(notebook, ['rider', 'kitted_mass'], 'mass')?.base
}

/** What the rider adds to one end, N: from both weighings, else a stated share of the rider's mass. */
export const riderLoadOf = perEntry((notebook, entry, end: End): Outcome => {
  const withRiderKg = axleMassOf(notebook, entry, 'rider', end)
  const withoutRiderKg = axleMassOf(notebook, entry, 'bike', end)
  if (withRiderKg !== undefined && withoutRiderKg !== undefined) return weighedRiderLoad({ withRiderKg, withoutRiderKg })
  return assumedLoadOf(notebook, end)
})

/** The same for all entries that were not weighed. */
const assumedLoadOf = perNotebook((notebook, end: End): Outcome => {
  const shared = sharedRiderLoad({ end, riderKg: riderMassOf(notebook) })
  return isMissing(shared) ? { missing: [say`the ${say(end)} axle’s load with and without the rider, or the rider’s kitted mass`] } : shared
})

/** What hangs on the springs of one end, N: its axle load less the unsprung mass there. */
export function sprungLoadOf(notebook: Notebook, entry: Entry, end: End, load: LoadCase): Outcome {
  const unsprungKg = factAt(notebook, ['machine', end, 'unsprung_mass'], 'mass')?.base
  return sprungLoad({ axleKg: axleMassOf(notebook, entry, load, end), unsprungKg })
}
