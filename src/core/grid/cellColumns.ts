import type { Cell, GridView } from './view'

type Columns = readonly (readonly Cell[])[]

/** The columns that the cells of a view were made from. One in which nothing differs is the very same array in the next view. */
const columns = new WeakMap<GridView['cells'], Columns>()

export function columnsOf(cells: GridView['cells']): Columns | undefined {
  return columns.get(cells)
}

/** The cells made last: mostly those of the same notebook before a keystroke, so that its rows stay, or are copied whole but for what differs. */
let last = new WeakRef<GridView['cells']>([])

/** The cells row by row, as a view has them: those of each row, by its index, that `hasCells`. */
export function inRows(made: Columns, rows: number, hasCells: (row: number) => boolean): Cell[][] {
  const before = last.deref()
  const old = before && columns.get(before)
  const differing = old?.length === made.length ? made.flatMap((column, at) => (column === old[at] ? [] : [at])) : undefined
  const isNearlyAll = differing !== undefined && differing.length < made.length / 4
  const rowOf = (row: number) => {
    const kept = isNearlyAll ? before?.[row] : undefined
    if (!kept || kept.length !== made.length) return made.map((column) => column[row]!)
    const others = differing!.filter((at) => kept[at] !== made[at]![row])
    if (others.length === 0) return kept
    const copy = kept.slice()
    for (const at of others) copy[at] = made[at]![row]!
    return copy
  }
  const cells = Array.from({ length: rows }, (_, row) => (hasCells(row) ? rowOf(row) : []))
  columns.set(cells, made)
  last = new WeakRef(cells)
  return cells
}
