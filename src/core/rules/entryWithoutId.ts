import type { Fix } from '../finding'
import { offer } from '../notebook/edits/offer'
import { asProse, setPath } from '../notebook/edits/setPath'
import { idsOf } from '../notebook/idsOf'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { freeId } from './duplicateEntry'
import type { NotebookRule } from './rule'

export const entryWithoutId: NotebookRule = {
  code: 'entry-without-id',
  severity: 'warning',
  says: 'An entry has no id.',
  why: 'Only an entry with a name can be gone back to, compared or come from.',
  checkNotebook: (notebook) => {
    const taken = idsOf(notebook.entries)
    return notebook.entries.filter(({ id }) => !id).map((entry) => ({ message: say('this entry has no `id`: give it a short name'), range: entry.range, entry, fixes: nameFix(entry, notebook, taken) }))
  },
}

function nameFix(entry: Entry, notebook: Notebook, taken: ReadonlySet<string>): Fix[] {
  const id = freeId(`entry-${entry.index}`, taken)
  return offer(say`Name it ‘${id}’`, () => setPath(notebook.text, entry.node, ['id'], id, asProse))
}
