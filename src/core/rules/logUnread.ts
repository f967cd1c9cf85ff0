import { logAtHandOf } from '../derived/logOf'
import { fieldNode } from '../notebook/fields'
import type { NotebookRule } from './rule'

export const logUnread: NotebookRule = {
  code: 'log-unread',
  severity: 'warning',
  says: 'The log of an entry is not there, or cannot be made sense of. Told only where logs are looked at.',
  why: 'An entry without its log says less than it seems to. One that is missing may lie on another machine, so that is a note alone.',
  checkNotebook: (notebook) => (notebook.logs ? notebook.entries : []).flatMap((entry) => {
    const log = logAtHandOf(notebook, entry)
    const node = fieldNode(entry, 'ride.log')
    if (log?.state !== 'unread' || !node) return []
    return [{ message: log.why, range: node.range, entry, row: 'ride.log', ...(log.absent ? { severity: 'info' as const } : {}) }]
  }),
}
