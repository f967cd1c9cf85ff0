import { canStand, HEADER, isCell, LABELS, type Ground, type Spot } from './spot'

/**
 * Where a key leads from a spot. Every function gives back a spot one can stand on; where there is none further
 * on, the one it was given.
 */

/** One step at a time in one direction, over headings. */
export function step(ground: Ground, from: Spot, rows: number, columns: number): Spot {
  const next = { row: from.row + rows, column: from.column + columns }
  while (next.row >= HEADER && next.row < ground.rows.length && next.column >= LABELS && next.column < ground.columns) {
    if (canStand(ground, next)) return next
    next.row += rows
    next.column += columns
  }
  return from
}

/** To the last cell in a direction, staying among cells: the header and the labels are one step further. */
export function toEdge(ground: Ground, from: Spot, rows: number, columns: number): Spot {
  if (columns !== 0) {
    const column = columns > 0 ? ground.columns - 1 : from.column > 0 ? 0 : LABELS
    return stand(ground, { row: from.row, column }, from)
  }
  const row = rows > 0 ? lastRow(ground, from.column) : from.row > firstRow(ground, from.column) ? firstRow(ground, from.column) : HEADER
  return stand(ground, { row, column: from.column }, from)
}

export const toRowStart = (ground: Ground, from: Spot) => stand(ground, { row: from.row, column: 0 }, from)
export const toRowEnd = (ground: Ground, from: Spot) => stand(ground, { row: from.row, column: ground.columns - 1 }, from)
export const toFirst = (ground: Ground, from: Spot) => stand(ground, { row: firstRow(ground, 0), column: 0 }, from)
export const toLast = (ground: Ground, from: Spot) => stand(ground, { row: lastRow(ground, 0), column: ground.columns - 1 }, from)

/** As far as the row `target` allows, never further, never onto a heading; for paging. */
export function towardsRow(ground: Ground, from: Spot, target: number): Spot {
  const down = target > from.row
  let best = from
  for (let row = from.row; down ? row <= target : row >= target; row += down ? 1 : -1) {
    if (row !== HEADER && canStand(ground, { row, column: from.column })) best = { row, column: from.column }
  }
  return best
}

/**
 * Tab: right; after the last entry down to the next row, in the column where the run of Tabs began, so that a
 * number and Tab walk down the newest entry. Undefined past the last cell: Tab then leaves the grid.
 */
export function tab(ground: Ground, from: Spot, runColumn: number): Spot | undefined {
  const right = step(ground, from, 0, 1)
  if (right !== from) return right
  const down = step(ground, { row: from.row, column: Math.max(0, Math.min(runColumn, ground.columns - 1)) }, 1, 0)
  return down.row === from.row ? undefined : down
}

/** Shift+Tab: left; before the first entry up to the row above, at its end. */
export function tabBack(ground: Ground, from: Spot): Spot | undefined {
  const left = step(ground, from, 0, -1)
  if (left !== from && (isCell(left) || !isCell(from))) return left
  const end = { row: from.row, column: ground.columns - 1 }
  const up = step(ground, end, -1, 0)
  return up.row === from.row || up.row === HEADER ? undefined : up
}

function stand(ground: Ground, wanted: Spot, otherwise: Spot): Spot {
  return canStand(ground, wanted) ? wanted : otherwise
}

function firstRow(ground: Ground, column: number): number {
  return step(ground, { row: HEADER, column: Math.max(column, 0) }, 1, 0).row
}

function lastRow(ground: Ground, column: number): number {
  const last = { row: ground.rows.length - 1, column }
  return canStand(ground, last) ? last.row : step(ground, last, -1, 0).row
}
