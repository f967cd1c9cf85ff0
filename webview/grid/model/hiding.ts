import type { Cell, Column, GridView } from '../../../src/core/grid/view'

/** Which rows are shown besides headings. */
export type RowFilter = 'all' | 'changed' | 'findings'

/** What a person does not want to see just now. It is the page's own and never the notebook's. */
export interface Hiding {
  /** Keys of headings whose rows are folded away. */
  folded: ReadonlySet<string>
  rows: RowFilter
  /** Words that an entry's id, date, reason or verdict must have, all of them. */
  entries: string
}

export const nothingHidden: Hiding = { folded: new Set(), rows: 'all', entries: '' }

/** What is left to see, by indices of the whole view. */
export interface Shown {
  rows: number[]
  columns: number[]
}

/** A folded heading stays, to be opened again; one without a row that passes the filter goes. */
export function shownOf(view: GridView, { folded, rows: filter, entries }: Hiding): Shown {
  const columns = view.columns.flatMap((column, index) => (hasWords(column, entries) ? [index] : []))
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

function hasWords({ id, date, reason, verdict }: Column, words: string): boolean {
  const text = [id, date, reason, verdict].join(' ').toLowerCase()
  return words.toLowerCase().split(/\s+/).every((word) => text.includes(word))
}
