import type { GridPlace } from '../../../src/core/grid/view'
import type { GridModel } from './gridModel'
import { blockOf, type Block, type Selection } from './selection'

/** A cell that takes nothing: it is worked out. */
export interface Filled {
  cells: ({ text: string } & GridPlace)[]
  /** Cells that are not edited, by place. */
  skipped: GridPlace[]
}

/**
 * What a fill sets: to the right, each row's first selected text goes into the others of it; down, each column's. With
 * one column or row selected it comes from the one before, as in spreadsheets. Undefined where there is none before.
 */
export function layFill(model: GridModel, selection: Selection, way: 'right' | 'down'): Filled | undefined {
  const block = blockOf(selection)
  if (block.top < 0 || block.left < 0) return undefined
  const rows = rowsIn(model, block)
  const source = way === 'right' ? (block.left === block.right ? block.left - 1 : block.left) : (rows.length === 1 ? rowAbove(model, rows[0]!) : rows[0]!)
  if (source < 0) return undefined
  const filled: Filled = { cells: [], skipped: [] }
  for (const row of rows) {
    for (let column = block.left; column <= block.right; column++) {
      if (way === 'right' ? column === source : row === source) continue
      const place = model.placeOf({ row, column })!
      const text = model.cell(way === 'right' ? { row, column: source } : { row: source, column })!.text
      if (model.row(row)!.kind === 'computed') filled.skipped.push(place)
      else filled.cells.push({ ...place, text })
    }
  }
  return filled
}

function rowsIn(model: GridModel, { top, bottom }: Block): number[] {
  return model.view.rows.flatMap((row, index) => (index >= top && index <= bottom && row.kind !== 'group' ? [index] : []))
}

function rowAbove(model: GridModel, row: number): number {
  for (let above = row - 1; above >= 0; above--) if (model.row(above)!.kind !== 'group') return above
  return -1
}
