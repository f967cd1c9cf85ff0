import type { PageView } from './unpackView'
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
  /** Keys of the entries that stay beside the labels, and of the rows that stay below the header. */
  pinned: readonly string[]
  pinnedRows: readonly string[]
}

export const nothingHidden: Hiding = { folded: new Set(), rows: 'all', entries: '', pinned: [], pinnedRows: [] }

/** What is left to see, by indices of the whole view. */
export interface Shown {
  rows: number[]
  columns: number[]
  /** How many of each, from the first on, are pinned. */
  pinned: number
  pinnedRows: number
}

/**
 * A folded heading stays, to be opened again; one without a row that passes the filter goes. Pinned entries and rows come first and
 * pass every filter: they are there to hold the others against.
 */
export function shownOf(view: PageView, { folded, rows: filter, entries, pinned, pinnedRows }: Hiding): Shown {
  const passing = entryFilter(entries)
  const pins = indicesOf(view.columns, pinned)
  const columns = [...pins, ...view.columns.flatMap((column, index) => (!pins.includes(index) && passing(column) ? [index] : []))]
  const isShown = (index: number) => filter === 'all' || columns.some((column) => passes(view.cells, index, column, filter))
  const frozen = indicesOf(view.rows, pinnedRows).filter((index) => view.rows[index]!.kind !== 'group')
  const rows = [...frozen]
  let heading: number | undefined
  let isFolded = false
  for (const [index, row] of view.rows.entries()) {
    if (row.kind === 'group') {
      heading = index
      isFolded = folded.has(row.key)
    } else if (!frozen.includes(index) && isShown(index)) {
      if (heading !== undefined) rows.push(heading)
      heading = undefined
      if (!isFolded) rows.push(index)
    }
  }
  return { rows, columns, pinned: pins.length, pinnedRows: frozen.length }
}

/** Where those with the given keys stand, in their own order; unknown keys are left out. */
function indicesOf(all: readonly { key: string }[], keys: readonly string[]): number[] {
  return keys.length === 0 ? [] : all.flatMap(({ key }, index) => (keys.includes(key) ? [index] : []))
}

function passes(cells: PageView['cells'], row: number, column: number, filter: RowFilter): boolean {
  return filter === 'changed' ? cells.said(row, column)?.changed === true : filter === 'findings' ? cells.isMarked(row, column) : true
}
