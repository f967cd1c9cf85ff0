import type { Cell, GridView } from './view'

type Columns = readonly (readonly Cell[])[]

/** The columns that the cells of a view were made from. One in which nothing differs is the very same array in the next view. */
const columns = new WeakMap<GridView['cells'], Columns>()

export function columnsOf(cells: GridView['cells']): Columns | undefined {
  return columns.get(cells)
}

/** The cells row by row, as a view has them: those of each row, by its index, that `hasCells`. */
export function inRows(made: Columns, rows: number, hasCells: (row: number) => boolean): Cell[][] {
  const cells = Array.from({ length: rows }, (_, row) => (hasCells(row) ? made.map((column) => column[row]!) : []))
  columns.set(cells, made)
  return cells
}
