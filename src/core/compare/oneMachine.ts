import { wordsAt } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'

/** Whether two notebooks are of one machine, as far as the name they give it tells. */
export function areOneMachine(left: Notebook, right: Notebook): boolean {
  if (left === right) return true
  const [a, b] = [left, right].map((notebook) => wordsAt(notebook, ['machine', 'name'])?.trim())
  return a !== undefined && a !== '' && a === b
}
