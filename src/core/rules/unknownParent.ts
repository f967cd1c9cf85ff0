import { nearest } from '../nearest'
import type { NotebookRule } from './rule'

export const unknownParent: NotebookRule = {
  code: 'unknown-parent',
  severity: 'error',
  says: '`from` names no entry of this notebook.',
  why: 'What an entry does not list it takes from the entry it comes from; without that one the state is unknown.',
  checkNotebook: ({ entries }) => {
    const ids = new Set(entries.flatMap((entry) => (entry.id ? [entry.id.value] : [])))
    return entries.flatMap(({ from }) => {
      if (!from || ids.has(from.value)) return []
      const meant = nearest(from.value, ids)
      const fixes = meant ? [{ title: `Write ‘${meant}’`, changes: [{ ...from.range, text: meant }] }] : []
      return [{ message: `no entry is called ‘${from.value}’${meant ? `; did you mean ${meant}?` : ''}`, range: from.range, fixes }]
    })
  },
}
