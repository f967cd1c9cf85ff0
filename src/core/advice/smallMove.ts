import { standsAt } from '../adjusters/positionWords'
import { meansOf, movementWords } from '../adjusters/changeWords'
import type { Adjuster } from '../adjusters/adjuster'
import { slotsFor, countAt } from '../derived/countAt'
import type { End } from '../compute/sag/loadCase'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'

/**
 * One small step of damping at one end in words: a click, or a quarter turn, of the first of these controls that is
 * there, can be told where it stands, and has room. Never onto its seat: fully closed is a place to count from, no
 * setting. `undefined` where there is none such.
 */
export function smallMove(notebook: Notebook, entry: Entry, end: End, controls: readonly string[], wanted: 'more' | 'less'): string | undefined {
  for (const control of controls) {
    const slots = slotsFor(notebook, control, end === 'front' ? 'fork' : 'shock')
    const counts = slots.map((slot) => countAt(entry, slot))
    const { adjuster } = slots[0] ?? {}
    const [at] = counts
    // Legs that stand apart are another advice.
    if (!adjuster || at === undefined || counts.some((count) => count === undefined || Math.abs(count - at) > 1e-6)) continue
    const step = adjuster.step ?? 0.25
    const by = meansOf(adjuster, 1) === wanted ? step : -step
    if (!hasRoom(adjuster, at + by)) continue
    const legs = slots.length === 2 ? `, ${say('both legs')}` : ''
    return `${adjuster.label} ${movementWords(adjuster, by)}${legs}, to ${standsAt(at + by, adjuster)}`
  }
  return undefined
}

/** Above the seat where it is counted from closed, short of it where it is counted from open. */
function hasRoom({ end, range }: Adjuster, to: number): boolean {
  if (end === 'closed') return to > 1e-6 && (range === undefined || to <= range)
  if (end === 'open') return to >= 0 && range !== undefined && to < range - 1e-6
  return to >= 0 && (range === undefined || to <= range)
}
