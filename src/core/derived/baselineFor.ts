import type { Entry } from '../notebook/notebook'

/** The last baseline before an entry, along the line it comes from. */
export function baselineFor(entry: Entry): Entry | undefined {
  for (let at = entry.parent; at; at = at.parent) if (at.baseline) return at
  return undefined
}
