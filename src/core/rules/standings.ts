import { ownCount } from '../adjusters/convert'
import { isOwnCount, type Adjuster } from '../adjusters/adjuster'
import type { Entry, Setting, Standing } from '../notebook/notebook'

/** Two counts that differ by less are the same position. */
const sameCount = 1e-6

/**
 * A setting as a count in its adjuster's own unit and from its own end; absent where it cannot be read or converted.
 * Facts that contradict one another convert nothing: there only what stands in the adjuster's own count is one.
 */
export function countOf(setting: Setting | undefined): number | undefined {
  const position = setting?.reading.value
  if (!position || (setting.adjuster.contradiction !== undefined && !isOwnCount(position, setting.adjuster))) return undefined
  return ownCount(position, setting.adjuster).count
}

export function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) < sameCount
}

/** A slot that an entry sets to something else than it was in the entry it comes from. */
export interface Change {
  slot: string
  before: Standing
  setting: Setting
  /** New count minus old one, in the adjuster's own count. */
  by: number
}

/** What an entry changed on the machine. A slot that was not known before is no change. */
export function changesOf(entry: Entry): Change[] {
  const changes: Change[] = []
  for (const [slot, setting] of entry.settings) {
    const before = entry.inherited.get(slot)
    const from = countOf(before?.setting)
    const to = countOf(setting)
    if (before && from !== undefined && to !== undefined && !isSame(from, to)) changes.push({ slot, before, setting, by: to - from })
  }
  return changes
}

/** The adjusters an entry changed; both legs of a pair count as one. */
export function changedAdjusters(entry: Entry): Adjuster[] {
  return [...new Set(changesOf(entry).map((change) => change.setting.adjuster))]
}
