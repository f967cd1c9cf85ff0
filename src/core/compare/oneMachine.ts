import { wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'

/** Whether two notebooks are of one machine: by the names they give it; without them by an entry that both have, word for word. */
export function areOneMachine(left: Notebook, right: Notebook): boolean {
  if (left === right) return true
  const [a, b] = [left, right].map((notebook) => wordsAt(notebook, ['machine', 'name'])?.trim())
  if (a && b) return a === b
  return left.entries.some((entry) => entry.reason !== undefined && right.entries.some((other) => isSameRecord(entry, other)))
}

/** The reason is in somebody's own words, so that chance is out of the question. */
function isSameRecord(a: Entry, b: Entry): boolean {
  return a.reason?.value === b.reason?.value && a.id?.value === b.id?.value && a.date?.value === b.date?.value
}
