import { canStand, HEADER, LABELS, type Ground, type Spot } from './spot'

/** The current cell and, for a range, the corner it was drawn from. */
export interface Selection {
  active: Spot
  anchor: Spot
}

/** Rows and columns from and to, both included. */
export interface Block {
  top: number
  left: number
  bottom: number
  right: number
}

export const only = (spot: Spot): Selection => ({ active: spot, anchor: spot })

/** Draws the range on to a spot. A header or a label is no part of a range. */
export function extended(selection: Selection, to: Spot): Selection {
  const { anchor } = selection
  const cells = (spot: Spot) => spot.row !== HEADER && spot.column !== LABELS
  return cells(anchor) && cells(to) ? { active: to, anchor } : only(to)
}

export function blockOf({ active, anchor }: Selection): Block {
  return {
    top: Math.min(active.row, anchor.row),
    bottom: Math.max(active.row, anchor.row),
    left: Math.min(active.column, anchor.column),
    right: Math.max(active.column, anchor.column),
  }
}

export const inBlock = (block: Block, row: number, column: number) =>
  row >= block.top && row <= block.bottom && column >= block.left && column <= block.right

export const isRange = ({ active, anchor }: Selection) => active.row !== anchor.row || active.column !== anchor.column

/** The cells of the range, row by row, without headings. */
export function spotsOf(ground: Ground, selection: Selection): Spot[] {
  const { top, bottom, left, right } = blockOf(selection)
  const spots: Spot[] = []
  for (let row = Math.max(top, 0); row <= bottom; row++) {
    for (let column = Math.max(left, 0); column <= right; column++) {
      if (canStand(ground, { row, column })) spots.push({ row, column })
    }
  }
  return spots
}
