import { idsOf } from '../notebook/idsOf'
import { say } from '../words/say'
import type { NotebookRule } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

export const duplicateEntry: NotebookRule = {
  code: 'duplicate-entry',
  severity: 'error',
  says: 'Two entries have the same id.',
  why: 'Going back to an entry, and coming from one, needs a name that means just one.',
  checkNotebook: ({ entries, text }) => {
    const known = idsOf(entries)
    if (known.size === entries.length) return []
    const ids = new Set(known)
    const seen = new Set<string>()
    const given = new Map<string, string>()
    return entries.flatMap((entry) => {
      const { id } = entry
      if (!id) return []
      if (!seen.has(id.value)) {
        seen.add(id.value)
        return []
      }
      // Counting on from the id given last keeps this quick where very many are alike.
      const free = freeId(given.get(id.value) ?? id.value, ids)
      given.set(id.value, free)
      ids.add(free)
      return [{ message: say`‘${id.value}’ is the id of an entry above already: give this one its own`, range: id.range, entry, fixes: writeInstead(text, id.node, free) }]
    })
  },
}

/** The next id that is not taken. @example freeId('run-3', new Set(['run-3'])) // 'run-4' */
export function freeId(id: string, taken: ReadonlySet<string>): string {
  const match = /^(.*?)(\d{1,9})$/.exec(id)
  const stem = match ? match[1]! : `${id}-`
  for (let n = match ? Number(match[2]) + 1 : 2; ; n++) if (!taken.has(`${stem}${n}`)) return `${stem}${n}`
}
