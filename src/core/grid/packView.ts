import type { Cell, GridView } from './view'

/** A grid on its way to the page: a season has ten cells of a kind for each one that differs, and each kind goes once. */
export interface PackedView extends Omit<GridView, 'cells'> {
  kinds: Cell[]
  /** `cells[row][column]`: which of `kinds`. */
  cells: number[][]
}

/** Packs a grid for the way to its page. */
export function packView(view: GridView): PackedView {
  const kinds: Cell[] = []
  const known = new Map<Cell | string, number>()
  const kindOf = (cell: Cell): number => {
    const same = known.get(cell)
    if (same !== undefined) return same
    const said = JSON.stringify(cell)
    const kind = known.get(said) ?? kinds.push(cell) - 1
    known.set(said, kind).set(cell, kind)
    return kind
  }
  return { ...view, cells: view.cells.map((row) => row.map(kindOf)), kinds }
}
