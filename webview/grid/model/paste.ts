import type { GridPlace } from '../../../src/core/grid/view'
import type { GridModel } from './gridModel'
import { blockOf, type Selection } from './selection'

/** What a paste sets, which cells it cannot, and how many texts lie beyond the last row or entry. */
export interface Pasted {
  cells: ({ text: string } & GridPlace)[]
  skipped: GridPlace[]
  beyond: number
}

/**
 * Lays a block of texts over the grid from the selection's first cell. One text fills the whole selection; a larger
 * selection is tiled where the block goes into it evenly. Headings are stepped over, not counted; computed rows are
 * named, and what lies beyond the last entry is counted.
 */
export function layPaste(model: GridModel, selection: Selection, block: readonly (readonly string[])[]): Pasted {
  const { top, left, bottom, right } = blockOf(selection)
  const rows = fillableRows(model, Math.max(top, 0))
  const height = block.length
  const width = Math.max(...block.map((line) => line.length))
  const down = tiled(rows.filter((row) => row <= bottom).length, height)
  const across = tiled(right - left + 1, width)
  const pasted: Pasted = { cells: [], skipped: [], beyond: 0 }
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) {
      const text = block[y % height]?.[x % width]
      if (text === undefined) continue
      const row = rows[y]
      const place = row === undefined ? undefined : model.placeOf({ row, column: Math.max(left, 0) + x })
      if (!place) pasted.beyond++
      else if (model.row(row!)!.kind === 'computed') pasted.skipped.push(place)
      else pasted.cells.push({ ...place, text })
    }
  }
  return pasted
}

const tiled = (selected: number, given: number) => (selected > given && selected % given === 0 ? selected : given)

function fillableRows(model: GridModel, from: number): number[] {
  return model.view.rows.flatMap((row, index) => (index >= from && row.kind !== 'group' ? [index] : []))
}
