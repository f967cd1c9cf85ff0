import { asProse, Refusal, setPath } from '../notebook/edits/setPath'
import type { Fix } from '../finding'
import type { Entry, Notebook } from '../notebook/notebook'
import { freeId } from './duplicateEntry'
import type { EntryRule } from './rule'

export const entryWithoutId: EntryRule = {
  code: 'entry-without-id',
  severity: 'warning',
  says: 'An entry has no id.',
  why: 'Only an entry with a name can be gone back to, compared or come from.',
  checkEntry: (entry, notebook) => (entry.id ? [] : [{ message: 'this entry has no `id`: give it a short name', range: entry.range, fixes: nameFix(entry, notebook) }]),
}

function nameFix(entry: Entry, notebook: Notebook): Fix[] {
  const taken = new Set(notebook.entries.flatMap((each) => (each.id ? [each.id.value] : [])))
  const id = freeId(`entry-${entry.index}`, taken)
  try {
    return [{ title: `Name it ‘${id}’`, changes: setPath(notebook.text, entry.node, ['id'], id, asProse) }]
  } catch (error) {
    if (error instanceof Refusal) return []
    throw error
  }
}
