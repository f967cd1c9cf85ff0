import type { Row } from '../../../src/core/grid/view'

/**
 * A place in the grid by index: `row` -1 is the header row, `column` -1 the column of labels.
 * Indices are good for one view only; across views places are kept by key (see keyed.ts).
 */
export interface Spot {
  row: number
  column: number
}

export const HEADER = -1
export const LABELS = -1

/** What there is to stand on. */
export interface Ground {
  rows: readonly Pick<Row, 'kind'>[]
  columns: number
}

export const sameSpot = (a: Spot, b: Spot) => a.row === b.row && a.column === b.column

/** A group's row is a heading: it can be stood on in the label column only. The corner is nothing. */
export function canStand({ rows, columns }: Ground, { row, column }: Spot): boolean {
  if (row < HEADER || row >= rows.length || column < LABELS || column >= columns) return false
  if (row === HEADER) return column !== LABELS
  return column === LABELS || rows[row]!.kind !== 'group'
}

/** Whether the spot is a cell of an entry, not a header or a label. */
export const isCell = ({ row, column }: Spot) => row >= 0 && column >= 0

/** The spot nearest to the wanted one on which one can stand; undefined when there is none at all. */
export function nearestSpot(ground: Ground, wanted: Spot): Spot | undefined {
  const column = Math.max(LABELS, Math.min(wanted.column, ground.columns - 1))
  const row = Math.max(HEADER, Math.min(wanted.row, ground.rows.length - 1))
  for (let away = 0; away <= ground.rows.length; away++) {
    for (const near of [{ row: row + away, column }, { row: row - away, column }]) {
      if (near.row !== HEADER || wanted.row === HEADER) if (canStand(ground, near)) return near
    }
  }
  return undefined
}
