import { Refusal } from '../notebook/edits/setPath'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'

/** The entry of a column. @throws Refusal when it is gone */
export function entryAt(notebook: Notebook, key: string): Entry {
  const entry = notebook.entries.find((each) => each.key === key)
  if (!entry) throw new Refusal(say`there is no entry ‘${key}’ any more`)
  return entry
}
