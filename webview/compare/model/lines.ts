import type { GridPlace } from '../../../src/core/grid/view'
import type { Severity } from '../../../src/core/finding'
import type { Bar } from './bar'

/** The columns of the table, as they are read. */
export const columns = ['label', 'left', 'change', 'right'] as const
export type ColumnName = (typeof columns)[number]

/** A row of the table, ready to draw. */
export interface Line {
  key: string
  kind: 'group' | 'position' | 'number' | 'words' | 'way' | 'finding'
  label: string
  detail?: string
  about?: string
  left: Value
  right: Value
  change?: ChangeText
  different: boolean
}

/** What one side has in a row. */
export interface Value {
  text: string
  /** Said behind it, quieter. */
  more?: string
  about?: string
  mark?: Severity
  /** Where Enter leads: to a cell of that side's grid, or to a line of its text. */
  place?: GridPlace
  line?: number
}

export interface ChangeText {
  words: string
  more?: string
  about?: string
  /** Said less loudly, for it is no change of anything. */
  quiet?: true
  bar?: Bar
  /** Of a number that was worked out: the way it goes, and whether beyond its uncertainty; absent where that is not known. */
  sign?: { more: boolean; sure: boolean }
}

/** The columns that a row fills: words need no change of their own, and leave its room to the sides. */
export function columnsOf({ kind, change }: Pick<Line, 'kind' | 'change'>): readonly ColumnName[] {
  if (kind === 'group') return ['label']
  return change === undefined ? ['label', 'left', 'right'] : columns
}
