import type { Entry } from '../notebook/notebook'
import { originOf } from '../notebook/tree'
import type { Cell, GridFinding } from './view'

/** What is found about one entry, in order: the very same list as last time where it says the same about the same rows. */
export type Found = readonly GridFinding[]

export const nothingFound: Found = []

/** By where their entry first stood: it may have moved since. */
const lists = new WeakMap<object, Found>()

/** What is found about each entry, by its key; what is about none is left out. */
export function foundByEntry(findings: readonly GridFinding[], entries: readonly Entry[]): Map<string, Found> {
  const found = new Map<string, GridFinding[]>()
  for (const finding of findings) {
    if (finding.column === undefined) continue
    const list = found.get(finding.column)
    if (list) list.push(finding)
    else found.set(finding.column, [finding])
  }
  const kept: Map<string, Found> = found
  for (const entry of entries) {
    const now = found.get(entry.key)
    if (now) kept.set(entry.key, asLastTime(now, entry))
  }
  return kept
}

/** What is found about these entries alone, put in place of what was; all others stay as they are. */
export function foundAgain(about: ReadonlyMap<string, Found>, keys: ReadonlySet<string>, findings: readonly GridFinding[], entries: readonly Entry[]): Map<string, Found> {
  const found = new Map(about)
  for (const key of keys) {
    const now = findings.filter(({ column }) => column === key)
    const entry = entries.find((each) => each.key === key)
    if (now.length === 0) found.delete(key)
    else found.set(key, entry ? asLastTime(now, entry) : now)
  }
  return found
}

function asLastTime(now: Found, { node }: Entry): Found {
  const origin = originOf(node)
  const before = lists.get(origin)
  if (before && marksTheSame(before, now)) return before
  lists.set(origin, now)
  return now
}

function marksTheSame(before: Found, now: Found): boolean {
  return before.length === now.length && before.every((finding, at) => {
    const other = now[at]!
    return finding === other || (finding.id === other.id && finding.severity === other.severity && finding.row === other.row)
  })
}

const rank = { error: 0, warning: 1, info: 2 }

const marked = new WeakMap<readonly Cell[], { found: Found; cells: readonly Cell[] }>()

/** The cells of an entry with what is found about them, the same as last time where both are; `rowAt` tells the index of a row by its key. */
export function markCells(column: readonly Cell[], found: Found, rowAt: ReadonlyMap<string, number>): readonly Cell[] {
  if (found.length === 0) return column
  const known = marked.get(column)
  if (known?.found === found) return known.cells
  const cells = [...column]
  for (const { id, severity, row = '' } of [...found].sort((a, b) => rank[a.severity] - rank[b.severity])) {
    const at = rowAt.get(row)
    if (at === undefined) continue
    const cell = cells[at]!
    // The cell itself is known for the next version, which may have other findings.
    cells[at] = { ...cell, findings: [...(cell.findings ?? []), id], worst: cell.worst ?? severity }
  }
  marked.set(column, { found, cells })
  return cells
}
