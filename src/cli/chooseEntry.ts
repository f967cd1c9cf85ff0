import type { Entry, Notebook } from '../core/notebook/notebook'
import { UsageError } from './outcome'

/** The entry of this id or key. @throws UsageError naming those there are */
export function chooseEntry({ entries }: Notebook, path: string, id: string): Entry {
  const entry = entries.find((each) => each.key === id || each.id?.value === id)
  if (!entry) throw new UsageError(`${path} has no entry ‘${id}’; it has ${entries.map(({ key }) => key).join(', ') || 'none'}`)
  return entry
}
