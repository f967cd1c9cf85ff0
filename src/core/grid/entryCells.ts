import { geometryDatum } from '../derived/geometryMoves'
import { logAtHandOf } from '../derived/logOf'
import { fileUnits, type DisplayUnits } from '../notation/displayUnits'
import { recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import { answersIn } from './computedRow'
import { basisOf, knownCell, type Basis } from './knownCells'
import { rowsOf, type RowSource } from './rows'
import type { Cell } from './view'

/** A group's row has no cells. */
const nothing: Cell = { state: 'empty', text: '' }

/** What is worked out later. */
const waiting: Cell = { state: 'computed', text: '…' }

/** Works out, entry by entry, what a grid of these units is made of, so that building it is then quick. For who has to let others go first. */
export function* workOutGrid(notebook: Notebook, units = fileUnits): Generator<void, void> {
  for (const entry of notebook.entries) {
    answersIn(notebook, entry)
    yield
  }
  const sources = rowsOf(notebook, units)
  const [rows, cells] = [nameOfRows(sources), cellsOf(notebook, sources, units)]
  for (const entry of notebook.entries) {
    cells.kept(entry, rows, cells.basis(entry))
    yield
  }
}

/** The cells of each entry, without what is found; before the last ones nothing is worked out. */
export function latelyOf(notebook: Notebook, sources: readonly RowSource[], units: DisplayUnits, lately: number): (readonly Cell[])[] {
  const cells = cellsOf(notebook, sources, units)
  const from = notebook.entries.length - lately
  return notebook.entries.map((entry, at) => cells.made(entry, cells.basis(entry), at < from))
}

/** The columns made last of a list of entries, and what they stand on. */
interface Made {
  rows: string
  bases: Basis[]
  columns: (readonly Cell[])[]
}

const made = new WeakMap<readonly Entry[], Made>()

/** The entries of the grid made last: mostly those of the same notebook before a keystroke, of which nearly all are the very same. */
let entriesBefore = new WeakRef<readonly Entry[]>([])

/** The cells of each entry, without what is found; those of one that is the same, and of which all that they stand on is, are the same as last time. */
export function unmarkedOf(notebook: Notebook, sources: readonly RowSource[], rows: string, units: DisplayUnits): (readonly Cell[])[] {
  const cells = cellsOf(notebook, sources, units)
  const { entries } = notebook
  const old = entriesBefore.deref()
  const before = old && made.get(old)
  const known = before?.rows === rows ? before : undefined
  const bases: Basis[] = []
  const columns = entries.map((entry, at) => {
    const basis = bases[at] = cells.basis(entry)
    if (known && old![at] === entry && known.bases[at] === basis) return known.columns[at]!
    return cells.kept(entry, rows, basis)
  })
  made.set(entries, { rows, bases, columns })
  entriesBefore = new WeakRef(entries)
  return columns
}

/** The cells of an entry, as they are made and as they are kept, and what they stand on. */
function cellsOf(notebook: Notebook, sources: readonly RowSource[], units: DisplayUnits) {
  const datum = geometryDatum(notebook)
  const withoutLog = basisOf(units, `${datum} `)
  const made = (entry: Entry, basis: Basis, isLater = false): readonly Cell[] => sources.map((source) =>
    (source.kind === 'group' ? nothing : isLater && source.kind === 'computed' ? waiting : knownCell(source, notebook, entry, basis)))
  return {
    made,
    kept: (entry: Entry, rows: string, basis: Basis) => recall(entry, rows, basis, () => made(entry, basis)),
    basis: (entry: Entry): Basis => {
      const stamp = logAtHandOf(notebook, entry)?.stamp
      return stamp === undefined ? withoutLog : basisOf(units, `${datum} ${stamp}`)
    },
  }
}

let rowsBefore = ''

/** What a column of these rows is known by: looked up in every entry, so the very same text as last time is hashed and compared at a glance. */
export function nameOfRows(sources: readonly RowSource[]): string {
  const name = `column ${sources.map(({ row }) => row.key).join('\n')}`
  if (name !== rowsBefore) rowsBefore = name
  return rowsBefore
}
