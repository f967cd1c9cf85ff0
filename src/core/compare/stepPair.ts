import type { Entry, Notebook } from '../notebook/notebook'
import type { StateRef } from './comparison'
import { withEntry } from './sides'

/** Two entries by their keys. */
export interface Pair {
  left: string
  right: string
}

/**
 * The pair one step on in the history, towards newer entries or older ones. An entry beside the one it comes from moves
 * on with it, and one beside itself in another version of its notebook likewise; any other left side is what someone
 * wants everything held against, and stays. `undefined` where there is no further entry.
 *
 * @example stepPair(asFound, run1, true) // { left: 'run-1', right: 'run-2' }
 */
export function stepPair(from: StateRef, to: StateRef, newer: boolean): Pair | undefined {
  const [left, right] = [withEntry(from), withEntry(to)]
  if (!left.entry || !right.entry) return undefined
  if (isChange(right, left)) {
    const pair = step({ left: right, right: left, newer })
    return pair && { left: pair.right, right: pair.left }
  }
  return step({ left, right, newer })
}

interface Step {
  left: StateRef
  right: StateRef
  newer: boolean
}

function step({ left, right, newer }: Step): Pair | undefined {
  const { entries } = right.notebook
  const onward = (index: number) => entries[index + (newer ? 1 : -1)]
  for (let next = onward(right.entry!.index); next; next = onward(next.index)) {
    const beside = partner(next, left, right)
    if (beside && !(beside === next && left.entry !== right.entry)) return { left: beside.key, right: next.key }
  }
  return undefined
}

/** What stands beside the next entry on the left. */
function partner(next: Entry, left: StateRef, right: StateRef): Entry | undefined {
  const isVersion = left.notebook !== right.notebook && isOf(left.entry!, right.entry!)
  if (isVersion) return nearestIn(left.notebook, next)
  return isChange(left, right) ? next.parent && nearestIn(left.notebook, next.parent) : left.entry
}

/** Whether the right entry comes from the left one. */
function isChange(left: StateRef, right: StateRef): boolean {
  const parent = right.entry!.parent
  return parent !== undefined && (left.notebook === right.notebook ? parent === left.entry : isOf(left.entry!, parent))
}

/** One entry in two versions of a notebook is told by its id. */
const isOf = (a: Entry, b: Entry) => a.id !== undefined && a.key === a.id.value && a.key === b.key && a.id.value === b.id?.value

/** The entry as it is in a notebook, or the nearest it comes from that is there. */
function nearestIn(notebook: Notebook, entry: Entry): Entry | undefined {
  for (let at: Entry | undefined = entry; at; at = at.parent) {
    const wanted = at
    const found = notebook.entries.find((each) => each === wanted || isOf(each, wanted))
    if (found) return found
  }
  return undefined
}
