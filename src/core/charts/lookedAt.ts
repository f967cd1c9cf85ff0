import type { Entry, Notebook } from '../notebook/notebook'

/** The entry that charts are of: the one named, the last where it is not there. */
export function entryLookedAt({ entries }: Notebook, key: string | undefined): Entry | undefined {
  return entries.find((entry) => entry.key === key) ?? entries.at(-1)
}
