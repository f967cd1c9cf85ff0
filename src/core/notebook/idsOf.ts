import type { Entry } from './notebook'
import { oncePer } from './oncePer'

/** Every id that an entry of a notebook has: made once for all rules that ask for it. */
export const idsOf: (entries: readonly Entry[]) => ReadonlySet<string> = oncePer((entries: readonly Entry[]) => {
  const ids = new Set<string>()
  for (const { id } of entries) if (id) ids.add(id.value)
  return ids
})
