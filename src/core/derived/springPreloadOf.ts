import type { End } from '../compute/sag/loadCase'
import type { Outcome } from '../compute/working/result'
import { factAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { countAt, millimetresFor, slotsFor } from './countAt'

/**
 * How far a spring of one end is pressed together with its wheel in the air, mm: what it is fitted with, its adjuster
 * fully backed off, and what the adjuster adds; the mean over the legs. Only for adjusters counted from backed off.
 */
export function springPreloadOf(notebook: Notebook, entry: Entry, end: End): Outcome<{ mm: number }> {
  const fitted = factAt(notebook, ['machine', end, 'spring_preload'], 'length')?.base
  if (fitted === undefined) return { missing: [say('the spring’s preload as fitted (`spring_preload`)')] }
  const slots = slotsFor(notebook, 'preload', end === 'front' ? 'fork' : 'shock')
  if (slots.length === 0) return { mm: fitted }
  let sum = 0
  for (const slot of slots) {
    const count = countAt(entry, slot)
    if (count === undefined) return { missing: [say`where ${slot.adjuster.label} stands`] }
    if (slot.adjuster.end !== 'open') return { missing: [say`a count of ${slot.adjuster.label} from fully backed off`] }
    const added = millimetresFor(slot.adjuster, count)
    if (added.count === undefined) return { missing: [added.missing] }
    sum += added.count
  }
  return { mm: fitted + sum / slots.length }
}
