import { columns, columnsOf, type ColumnName, type Line } from './lines'

/** A cell of the table: the key of its line, and the column that is walked in, which a line need not fill. */
export interface Spot {
  line: string
  column: ColumnName
}

/** Where a key leads. A page is so many lines as `pageSize` tells. */
export type Move =
  | { kind: 'step'; lines: number; columns: number }
  | { kind: 'page'; down: boolean }
  | { kind: 'lineStart' | 'lineEnd' | 'first' | 'last' }

/** The cell one stands on in a line, for the column one walks in: the one to its left where the line does not fill it. */
export function filled(line: Line, column: ColumnName): ColumnName {
  const there = columnsOf(line)
  const upTo = columns.indexOf(column)
  return there.filter((each) => columns.indexOf(each) <= upTo).at(-1) ?? 'label'
}

/** The cell that a key leads to; headings are passed over. `undefined` where there is no line to stand on. */
export function walk(lines: readonly Line[], from: Spot, move: Move, pageSize: number): Spot | undefined {
  const ground = lines.filter(({ kind }) => kind !== 'group')
  const at = Math.max(0, ground.findIndex(({ key }) => key === from.line))
  const line = ground[at]
  if (!line) return undefined
  const toLine = (index: number): Spot => ({ line: ground[Math.min(ground.length - 1, Math.max(0, index))]!.key, column: from.column })
  switch (move.kind) {
    case 'step': return move.lines !== 0 ? toLine(at + move.lines) : { line: line.key, column: beside(line, from.column, move.columns) }
    case 'page': return toLine(at + (move.down ? pageSize : -pageSize))
    case 'lineStart': return { line: line.key, column: 'label' }
    case 'lineEnd': return { line: line.key, column: 'right' }
    case 'first': return { line: ground[0]!.key, column: from.column }
    case 'last': return { line: ground.at(-1)!.key, column: from.column }
  }
}

function beside(line: Line, column: ColumnName, by: number): ColumnName {
  const there = columnsOf(line)
  const at = there.indexOf(filled(line, column))
  return there[Math.min(there.length - 1, Math.max(0, at + by))]!
}

/** Where to stand after the lines have changed: on the same line, else on the first that differs, else on the first. */
export function settle(lines: readonly Line[], wanted: Spot | undefined): Spot | undefined {
  const ground = lines.filter(({ kind }) => kind !== 'group')
  const same = ground.find(({ key }) => key === wanted?.line)
  const line = same ?? ground.find(({ different }) => different) ?? ground[0]
  return line && { line: line.key, column: wanted?.column ?? 'label' }
}
