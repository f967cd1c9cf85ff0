import type { Cell, GridView } from '../../../src/core/grid/view'
import { entryFilter } from './entryFilter'

/** Which rows are shown besides headings. */
export type RowFilter = 'all' | 'changed' | 'findings'

/** What a person does not want to see just now. It is the page's own and never the notebook's. */
export interface Hiding {
  /** Keys of headings whose rows are folded away. */
  folded: ReadonlySet<string>
  rows: RowFilter
  /** What entries must have, as `entryPasses` reads it. */
  entries: string
  /** Key of the entry that stays beside the labels; empty for none. */
  pinned: string
}

export const nothingHidden: Hiding = { folded: new Set(), rows: 'all', entries: '', pinned: '' }

/** What is left to see, by indices of the whole view. */
export interface Shown {
  rows: number[]
  columns: number[]
}

/**
 * A folded heading stays, to be opened again; one without a row that passes the filter goes. A pinned entry comes first and
 * passes every filter: it is there to hold the others against.
 */
export function shownOf(view: GridView, { folded, rows: filter, entries, pinned }: Hiding): Shown {
  const passing = entryFilter(entries)
  const pin = pinned === '' ? -1 : view.columns.findIndex(({ key }) => key === pinned)
  const others = view.columns.flatMap((column, index) => (index !== pin && passing(column) ? [index] : []))
  const columns = pin < 0 ? others : [pin, ...others]
  const isShown = (index: number) => filter === 'all' || columns.some((column) => passes(view.cells[index]![column]!, filter))
  const rows: number[] = []
  let heading: number | undefined
  let isFolded = false
  for (const [index, row] of view.rows.entries()) {
    if (row.kind === 'group') {
      heading = index
      isFolded = folded.has(row.key)
    } else if (isShown(index)) {
      if (heading !== undefined) rows.push(heading)
      heading = undefined
      if (!isFolded) rows.push(index)
    }
  }
  return { rows, columns }
}

function passes(cell: Cell, filter: RowFilter): boolean {
  return filter === 'changed' ? cell.changed === true : filter === 'findings' ? (cell.findings?.length ?? 0) > 0 : true
}
