import type { Entry } from '../notebook/notebook'
import type { Branch } from './view'

/** More lines side by side than this help nobody; a branch that finds no lane only says where it comes from. */
const mostLanes = 6

/**
 * How the history branches, an entry each; `undefined` where the entries follow one another in one line. Each line of
 * entries keeps to a lane, and a line that leaves an earlier entry runs in a lane where nothing stands in between.
 */
export function branchesOf(entries: readonly Entry[]): Branch[] | undefined {
  if (entries.every((entry, at) => entry.parent === entries[at - 1])) return undefined
  const branches = entries.map((): Branch => ({ lane: 0, passing: [], heirs: [] }))
  const lastIn: number[] = []
  entries.forEach((entry, at) => {
    const branch = branches[at]!
    const parent = entry.parent
    if (parent) branches[parent.index]!.heirs.push(entry.key)
    if (at > 0 && parent === entries[at - 1]) branch.lane = branches[at - 1]!.lane
    else if (parent) leave(parent, at, branches, lastIn)
    else if (at > 0) Object.assign(branch, { lane: freeLane(lastIn, at - 2) ?? 0, begins: true })
    lastIn[branch.lane] = at
  })
  return branches
}

/** Draws a line from an earlier entry to the one at this place. One that stands later in the file is only named. */
function leave(parent: Entry, at: number, branches: Branch[], lastIn: readonly number[]): void {
  const lane = parent.index < at ? freeLane(lastIn, parent.index) : undefined
  const branch = branches[at]!
  branch.from = { column: parent.key, drawn: lane !== undefined }
  branch.lane = lane ?? 0
  if (lane !== undefined) for (const passed of branches.slice(parent.index + 1, at)) passed.passing.push(lane)
}

/** The lowest lane in which nothing stands behind this place. */
function freeLane(lastIn: readonly number[], behind: number): number | undefined {
  for (let lane = 0; lane < mostLanes; lane++) if ((lastIn[lane] ?? -1) <= behind) return lane
  return undefined
}
