import type { Entry, Notebook } from '../core/notebook/notebook'

/** The entry that an offset below `entries` stands in: the last one that begins at or before it. */
export function entryAtOffset({ entries }: Notebook, offset: number): Entry | undefined {
  let low = 0
  let high = entries.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (entries[middle]!.node.range.start <= offset) low = middle + 1
    else high = middle
  }
  return entries[low - 1]
}
