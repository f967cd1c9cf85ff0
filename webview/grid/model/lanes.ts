import type { Column } from '../../../src/core/grid/view'

/** What is drawn of the history over one column; lanes count from 0 at the top. */
export interface LaneMarks {
  own: number
  /** Lanes of lines that only pass. */
  passing: number[]
  /** A line comes in from the left, in its own lane. */
  comes: boolean
  /** It goes on to the next column, in its own lane. */
  goesOn: boolean
  /** Lanes of the lines that leave here for columns further on. */
  leaves: number[]
  /** Nothing comes from it, and it is not the last: it was tried and left. */
  left: boolean
}

/** A drawing of the history, a mark a column, and how many lanes it takes; `undefined` where it branches nowhere. */
export function lanesOf(columns: readonly Column[]): { count: number; marks: LaneMarks[] } | undefined {
  if (columns.length === 0 || columns.some(({ branch }) => branch === undefined)) return undefined
  const leaves = new Map<string, Set<number>>()
  for (const { branch } of columns) {
    const from = branch!.from
    if (from?.drawn) leaves.set(from.column, (leaves.get(from.column) ?? new Set()).add(branch!.lane))
  }
  const hangsOn = (branch: Column['branch']) => branch !== undefined && branch.from === undefined && branch.begins !== true
  const marks = columns.map(({ key, branch }, at): LaneMarks => {
    const { lane, from, passing, heirs } = branch!
    return {
      own: lane, passing: [...new Set(passing)], comes: from?.drawn === true || (at > 0 && hangsOn(branch)), goesOn: hangsOn(columns[at + 1]?.branch),
      leaves: [...(leaves.get(key) ?? [])], left: heirs.length === 0 && at < columns.length - 1,
    }
  })
  return { count: 1 + Math.max(...marks.flatMap(({ own, passing }) => [own, ...passing])), marks }
}

/** The entry a column comes from: by name, else the one before; `undefined` for the first and for one that begins anew. */
export function parentOf(columns: readonly Column[], at: number): string | undefined {
  const branch = columns[at]?.branch
  if (!branch || branch.begins) return undefined
  return branch.from?.column ?? columns[at - 1]?.key
}
