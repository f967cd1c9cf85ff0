import { pairOf } from '../notebook/tree'
import { say } from '../words/say'
import type { EntryRule } from './rule'
import { changedAdjusters } from './standings'

export const severalChanges: EntryRule = {
  code: 'several-changes',
  severity: 'warning',
  says: 'More than one thing was changed at once; both legs of a pair count as one.',
  why: 'After two changes nobody can tell which of them did it. One at a time, ride, then the next.',
  checkEntry: (entry) => {
    if (entry.asFound) return []
    const changed = changedAdjusters(entry)
    if (changed.length < 2) return []
    const names = changed.map(({ label }) => label).join('; ')
    const range = pairOf(entry.node, 'settings')?.key.range ?? entry.range
    return [{ message: say`${changed.length} things changed at once, so nobody can tell which did what: ${names}`, range }]
  },
}
