import { architectures } from '../adjusters/architectures'
import { geometryDatum } from '../derived/geometryMoves'
import { logAtHandOf } from '../derived/logOf'
import type { Finding } from '../finding'
import { fileUnits, type DisplayUnits } from '../notation/displayUnits'
import { wordsAt } from '../notebook/machine'
import { recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import { originOf, scalarAt } from '../notebook/tree'
import { say } from '../words/say'
import { branchesOf } from './branches'
import { cautions } from './cautions'
import { inRows } from './cellColumns'
import { markCells, nothingFound, type Found } from './found'
import { basisOf, knownCell, type Basis } from './knownCells'
import { linesOf, listFindings } from './listFindings'
import { rowsOf, type RowSource } from './rows'
import type { Cell, Column, GridView } from './view'

/** The grid of a notebook with its findings marked in place, computed numbers in the units asked for. */
export function buildGrid(notebook: Notebook, findings: readonly Finding[], units = fileUnits): GridView {
  const sources = rowsOf(notebook, units)
  const { shown, about } = listFindings(findings, notebook)
  const rows = new Map(sources.map(({ row }, at) => [row.key, at]))
  const named = nameOfRows(sources)
  const branches = branchesOf(notebook.entries)
  const columns = notebook.entries.map((entry, at): Column => {
    const column = columnOf(entry, about.get(entry.key) ?? nothingFound, rows, named)
    return branches ? { ...column, branch: branches[at]! } : column
  })
  const cells = inRows(
    unmarkedOf(notebook, sources, named, units).map((column, at) => markCells(column, about.get(notebook.entries[at]!.key) ?? nothingFound, rows)),
    sources.length, (row) => sources[row]!.kind !== 'group',
  )
  const beginnings = notebook.root ? [] : architectures.map(({ key, label, about }) => ({ key, label: say(label), about: say(about) }))
  const empty = notebook.adjusters.size === 0 && notebook.entries.length === 0
  return {
    title: wordsAt(notebook, ['machine', 'name']) ?? '',
    state: notebook.broken ? 'broken' : notebook.newer ? 'newer' : empty ? 'empty' : 'ready',
    ...(notebook.broken ? { trouble: { message: notebook.broken.message, line: linesOf(notebook.text)(notebook.broken.range.start) } } : {}),
    ...(notebook.newer ? { readOnly: say('This notebook is written in a newer format. Update Detent to edit it.') } : {}),
    columns, rows: sources.map(({ row }) => row), cells, findings: shown, cautions: cautions.map((words) => say(words)),
    ...(empty && beginnings.length > 0 && !notebook.broken ? { beginnings } : {}),
  }
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
function unmarkedOf(notebook: Notebook, sources: readonly RowSource[], rows: string, units: DisplayUnits): (readonly Cell[])[] {
  const datum = geometryDatum(notebook)
  const withoutLog = basisOf(units, `${datum} `)
  const { entries } = notebook
  const old = entriesBefore.deref()
  const before = old && made.get(old)
  const known = before?.rows === rows ? before : undefined
  const bases: Basis[] = []
  const columns = entries.map((entry, at) => {
    const stamp = logAtHandOf(notebook, entry)?.stamp
    const basis = bases[at] = stamp === undefined ? withoutLog : basisOf(units, `${datum} ${stamp}`)
    if (known && old![at] === entry && known.bases[at] === basis) return known.columns[at]!
    return recall(entry, rows, basis, () => sources.map((source) => (source.kind === 'group' ? nothing : knownCell(source, notebook, entry, basis))))
  })
  made.set(entries, { rows, bases, columns })
  entriesBefore = new WeakRef(entries)
  return columns
}

let rowsBefore = ''

/** What a column of these rows is known by: looked up in every entry, so the very same text as last time is hashed and compared at a glance. */
function nameOfRows(sources: readonly RowSource[]): string {
  const name = `column ${sources.map(({ row }) => row.key).join('\n')}`
  if (name !== rowsBefore) rowsBefore = name
  return rowsBefore
}

/** By where their entry first stood: it may have moved since. */
const columns = new WeakMap<object, { key: string; rows: string; found: Found; column: Column }>()

/** The same object as long as the entry says the same and the same is found about it. */
function columnOf(entry: Entry, found: Found, rowAt: ReadonlyMap<string, number>, rows: string): Column {
  const origin = originOf(entry.node)
  const known = columns.get(origin)
  if (known?.key === entry.key && known.found === found && known.rows === rows) return known.column
  const column = makeColumn(entry, found.flatMap(({ id, row }) => (row !== undefined && rowAt.has(row) ? [] : [id])))
  columns.set(origin, { key: entry.key, rows, found, column })
  return column
}

function makeColumn(entry: Entry, findings: number[]): Column {
  const session = scalarAt(entry.node, ['session'])?.text
  return {
    key: entry.key,
    id: entry.id?.value ?? '',
    date: entry.date?.value ?? '',
    reason: entry.reason?.value ?? '',
    ...(entry.from ? { from: entry.from.value } : {}),
    asFound: entry.asFound,
    baseline: entry.baseline,
    verdict: scalarAt(entry.node, ['verdict'])?.text ?? '',
    ...(session === undefined ? {} : { session }),
    findings,
  }
}

/** A group's row has no cells. */
const nothing: Cell = { state: 'empty', text: '' }
