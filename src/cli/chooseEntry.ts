import { nearest } from '../core/nearest'
import type { Entry, Notebook } from '../core/notebook/notebook'
import { UsageError } from './outcome'

/** A long season is not told whole. */
const mostNamed = 12

/** The entry of this id or key, or at this place as `#3`. @throws UsageError naming the one that was probably meant, and those there are */
export function chooseEntry({ entries }: Notebook, path: string, id: string): Entry {
  const entry = entries.find((each) => each.key === id) ?? entries.find((each) => each.id?.value === id) ?? entries.find(({ index }) => id === `#${index + 1}`)
  if (entry) return entry
  const keys = entries.map(({ key }) => key)
  const meant = nearest(id, keys)
  const last = keys.slice(-mostNamed)
  const named = `it has ${keys.length > last.length ? `${keys.length} entries, the last of them ` : ''}${last.join(', ') || 'none'}`
  throw new UsageError(`${path} has no entry ‘${id}’; ${meant ? `did you mean ‘${meant}’? ${named[0]!.toUpperCase()}${named.slice(1)}` : named}`)
}
