import { slotsFor, countAt } from '../derived/countAt'
import type { End, LoadCase } from '../compute/sag/loadCase'
import { isMissing } from '../compute/working/result'
import { sagOf } from '../derived/sagOf'
import type { Entry, Notebook } from '../notebook/notebook'

const support = ['preload', 'spring_rate', 'air_pressure', 'balance_pressure', 'oil_level']

/**
 * The entry whose sag still holds for this one: itself, or the nearest before it on its line in which everything that
 * carries that end stood as it stands now. What was set in the entry of the reading counts as set before it was read.
 */
export function sagEvidence(notebook: Notebook, entry: Entry, end: End, load: LoadCase): Entry | undefined {
  return evidenceFor(notebook, entry, end, support, (at) => !isMissing(sagOf(notebook, at, end, load)))
}

/** The same for any reading and the controls that it hangs on. */
export function evidenceFor(notebook: Notebook, entry: Entry, end: End, controls: readonly string[], has: (entry: Entry) => boolean): Entry | undefined {
  const slots = controls.flatMap((control) => slotsFor(notebook, control, end === 'front' ? 'fork' : 'shock'))
  for (let at: Entry | undefined = entry; at; at = at.parent) {
    if (has(at) && slots.every((slot) => isAlike(countAt(at!, slot), countAt(entry, slot)))) return at
  }
  return undefined
}

const isAlike = (a: number | undefined, b: number | undefined): boolean => (a === undefined || b === undefined ? a === b : Math.abs(a - b) < 1e-6)
