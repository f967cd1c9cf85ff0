import { say } from '../words/say'
import type { EntryRule } from './rule'
import { changedAdjusters } from './standings'

export const noReason: EntryRule = {
  code: 'no-reason',
  severity: 'warning',
  says: 'Something was changed and no reason is given.',
  why: 'Weeks later the reason is what tells whether to keep a change or go back.',
  checkEntry: (entry) => {
    if (entry.asFound || entry.reason?.value.trim()) return []
    const changed = changedAdjusters(entry)
    if (changed.length === 0) return []
    return [{ message: say`say why this was changed, as \`reason\`: ${changed.map(({ label }) => label).join('; ')}`, range: entry.range, row: 'reason' }]
  },
}
