import type { Fix } from '../finding'
import { offer } from '../notebook/edits/offer'
import { removePath } from '../notebook/edits/setPath'
import type { Entry } from '../notebook/notebook'
import { idsOf } from '../notebook/idsOf'
import { say } from '../words/say'
import type { NotebookRule } from './rule'

export const parentLoop: NotebookRule = {
  code: 'parent-loop',
  severity: 'error',
  says: 'An entry comes from itself, directly or over others.',
  why: 'A history has a beginning. In a loop no position can be resolved.',
  checkNotebook: ({ entries, text }) => {
    const ids = idsOf(entries)
    // Reading leaves a parent out where `from` is known all the same: it led back to the entry.
    return entries.flatMap((entry) => {
      const { from, parent, id } = entry
      if (!from || parent || !ids.has(from.value)) return []
      const itself = from.value === id?.value
      const message = itself ? say`‘${from.value}’ cannot come from itself: name the entry it really started from`
        : id ? say`‘${from.value}’ leads back to ‘${id.value}’: name the entry it really started from` : say`‘${from.value}’ leads back to this entry: name the entry it really started from`
      return [{ message, range: from.range, entry, fixes: takeOut(entry, text) }]
    })
  },
}

function takeOut(entry: Entry, text: string): Fix[] {
  return offer(entry.index === 0 ? say('Take `from` out: the history begins here') : say('Take `from` out: it then comes from the entry before'), () => removePath(text, entry.node, ['from']))
}
