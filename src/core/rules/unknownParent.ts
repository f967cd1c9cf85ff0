import { idsOf } from '../notebook/idsOf'
import { say } from '../words/say'
import { meantName } from './meantName'
import type { NotebookRule } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

export const unknownParent: NotebookRule = {
  code: 'unknown-parent',
  severity: 'error',
  says: '`from` names no entry of this notebook.',
  why: 'What an entry does not list it takes from the entry it comes from; without that one the state is unknown.',
  checkNotebook: ({ entries, text }) => {
    const ids = idsOf(entries)
    return entries.flatMap((entry) => {
      const { from, id } = entry
      if (!from || ids.has(from.value)) return []
      const meant = meantName(from.value, ids, id?.value)
      const hint = meant ? say`; did you mean ${meant}?` : say(', so nothing is carried into this one')
      return [{ message: say`no entry is called ‘${from.value}’${hint}`, range: from.range, entry, fixes: meant ? writeInstead(text, from.node, meant) : [] }]
    })
  },
}
