import { cardFor } from '../core/card/cardFor'
import { cardMarkdown } from '../core/card/cardMarkdown'
import type { DisplayUnits } from '../core/notation/displayUnits'
import type { Notebook } from '../core/notebook/notebook'
import { entryAtOffset } from './entryAtOffset'
import type { Hover } from './hover'
import type { Located } from './locate'

/** The row that is worked out from what stands under a path of an entry, by the path without the entry's place. */
const rows: readonly [pattern: RegExp, row: (which: string) => string][] = [
  [/^sag\.(front|rear)\.bike\b/, (end) => `${end}.static_sag_mm`],
  [/^sag\.(front|rear)\.rider\b/, (end) => `${end}.rider_sag_mm`],
  [/^sag\.(front|rear)$/, (end) => `${end}.wheel_rate_n_per_mm`],
  [/^bounce\.(front|rear)\b/, (end) => `bounce.${end}.damping_ratio`],
  [/^axle_loads\.(bike|rider)\./, (load) => `loads.${load}_front_pct`],
  [/^ride\.(front|rear)_travel_used$/, (end) => `${end}.travel_used_pct`],
  [/^ride\.(front|rear)_tyre_hot$/, (end) => `${end}.tyre_rise_pct`],
]

/** On something measured: what follows from it in this entry, with its whole working. */
export function measuredHover(notebook: Notebook, { path, node, on }: Located, offset: number, units: DisplayUnits): Hover | undefined {
  const [section, , ...within] = path
  const entry = section === 'entries' ? entryAtOffset(notebook, offset) : undefined
  // On the name of a key the format's own words stay.
  if (!entry || (on === 'key' && within.length < 2)) return undefined
  for (const [pattern, row] of rows) {
    const end = pattern.exec(within.join('.'))?.[1]
    const card = end && cardFor(notebook, `computed/${row(end)}`, entry.key, units)
    if (card) return { range: node.range, markdown: cardMarkdown(card) }
  }
  return undefined
}
