import { columnsOf } from './cellColumns'
import { differing, whatCame, whatWent } from './differing'
import type { Cell, Column, GridFinding, GridView, Row } from './view'

/** What differs between two views whose rows and columns are the same in number, order and key. */
export interface GridDifference {
  columns: [index: number, column: Column][]
  cells: [row: number, column: number, cell: Cell][]
  /** Findings that came or differ, and the ids of those that went; absent where they are the same. */
  findings?: { put: GridFinding[]; gone: number[] }
}

/** `undefined` where rows or columns came, went or moved, so that the grid has to be shown anew. */
export function diffGrid(before: GridView, after: GridView): GridDifference | undefined {
  if (before.rows.length !== after.rows.length || before.columns.length !== after.columns.length) return undefined
  if (!before.rows.every((row, at) => sameRow(row, after.rows[at]!))) return undefined
  if (!before.columns.every((column, at) => column.key === after.columns[at]!.key)) return undefined
  const columns = after.columns.flatMap((column, at): [number, Column][] => (same(before.columns[at], column) ? [] : [[at, column]]))
  const cells = diffCells(before.cells, after.cells)
  const findings = diffFindings(before.findings, after.findings)
  return { columns, cells, ...(findings ? { findings } : {}) }
}

/** Row by row, in the columns that are not known to be the same. */
function diffCells(before: GridView['cells'], after: GridView['cells']): GridDifference['cells'] {
  const columns = changedColumns(before, after)
  return after.flatMap((row, at) => {
    const old = before[at]
    return row.length === 0 ? [] : columns.flatMap((column): GridDifference['cells'] => (same(old?.[column], row[column]) ? [] : [[at, column, row[column]!]]))
  })
}

function changedColumns(before: GridView['cells'], after: GridView['cells']): number[] {
  const [old, now] = [columnsOf(before), columnsOf(after)]
  const all = Array.from({ length: now?.length ?? Math.max(0, ...after.map((row) => row.length)) }, (_, at) => at)
  return old && now ? all.filter((at) => old[at] !== now[at]) : all
}

/** Nearly all are the very same after a keystroke; what is not is compared by ids. */
function diffFindings(before: readonly GridFinding[], after: readonly GridFinding[]): GridDifference['findings'] {
  const gaps = differing(before, after)
  return gaps ? diffById(whatWent(before, gaps), whatCame(after, gaps)) : diffById(before, after)
}

function diffById(before: readonly GridFinding[], after: readonly GridFinding[]): GridDifference['findings'] {
  const old = new Map(before.map((finding) => [finding.id, finding]))
  const put = after.filter((finding) => !same(old.get(finding.id), finding))
  const now = new Set(after.map(({ id }) => id))
  const gone = before.flatMap(({ id }) => (now.has(id) ? [] : [id]))
  return put.length > 0 || gone.length > 0 ? { put, gone } : undefined
}

function sameRow(a: Row, b: Row): boolean {
  return same(a, b)
}

/** Equality of plain data: objects with the same keys and values, arrays, and what compares with `===`. */
function same(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const [ka, kb] = [Object.keys(a), Object.keys(b)]
  return ka.length === kb.length && ka.every((key) => same((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
}
