import type { Entry } from '../notebook/notebook'

/** How far back it is worth looking: what was read longer ago was read on another machine, as good as. */
const mostBack = 30

/** This entry or the nearest on the line before it of which something is known, and that. */
export function lastKnown<T>(entry: Entry, of: (entry: Entry) => T | undefined): { entry: Entry; known: T } | undefined {
  let at: Entry | undefined = entry
  for (let back = 0; at && back <= mostBack; back++, at = at.parent) {
    const known = of(at)
    if (known !== undefined) return { entry: at, known }
  }
  return undefined
}
