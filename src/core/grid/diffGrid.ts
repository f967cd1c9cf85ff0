import type { Cell, Column, GridView, Row } from './view'

/** What differs between two views whose rows and columns are the same in number, order and key. */
export interface GridDifference {
  columns: [index: number, column: Column][]
  cells: [row: number, column: number, cell: Cell][]
  findingsDiffer: boolean
}

/** `undefined` where rows or columns came, went or moved, so that the grid has to be shown anew. */
export function diffGrid(before: GridView, after: GridView): GridDifference | undefined {
  if (before.rows.length !== after.rows.length || before.columns.length !== after.columns.length) return undefined
  if (!before.rows.every((row, at) => sameRow(row, after.rows[at]!))) return undefined
  if (!before.columns.every((column, at) => column.key === after.columns[at]!.key)) return undefined
  const columns = after.columns.flatMap((column, at): [number, Column][] => (same(before.columns[at], column) ? [] : [[at, column]]))
  const cells = after.cells.flatMap((row, at) =>
    row.flatMap((cell, column): [number, number, Cell][] => (same(before.cells[at]?.[column], cell) ? [] : [[at, column, cell]])))
  return { columns, cells, findingsDiffer: !same(before.findings, after.findings) }
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
