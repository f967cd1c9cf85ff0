import { architectures } from '../adjusters/architectures'
import type { Finding } from '../finding'
import { fileUnits } from '../notation/displayUnits'
import { wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { originOf, scalarAt } from '../notebook/tree'
import { say } from '../words/say'
import { branchesOf } from './branches'
import { cautions } from './cautions'
import { inRows } from './cellColumns'
import { markCells, nothingFound, type Found } from './found'
import { latelyOf, nameOfRows, unmarkedOf } from './entryCells'
import { linesOf, listFindings } from './listFindings'
import { rowsOf } from './rows'
import type { Column, GridView } from './view'

/**
 * The grid of a notebook with its findings marked in place, computed numbers in the units asked for. For a first sight of a long one,
 * only its `lately` last entries may have theirs, and the view is `unfinished`.
 */
export function buildGrid(notebook: Notebook, findings: readonly Finding[], units = fileUnits, lately = Infinity): GridView {
  const sources = rowsOf(notebook, units)
  const { shown, about } = listFindings(findings, notebook)
  const rows = new Map(sources.map(({ row }, at) => [row.key, at]))
  const named = nameOfRows(sources)
  const branches = branchesOf(notebook.entries)
  const columns = notebook.entries.map((entry, at): Column => {
    const column = columnOf(entry, about.get(entry.key) ?? nothingFound, rows, named)
    return branches ? { ...column, branch: branches[at]! } : column
  })
  const isUnfinished = notebook.entries.length > lately
  const unmarked = isUnfinished ? latelyOf(notebook, sources, units, lately) : unmarkedOf(notebook, sources, named, units)
  const cells = inRows(
    unmarked.map((column, at) => markCells(column, about.get(notebook.entries[at]!.key) ?? nothingFound, rows)),
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
    ...(isUnfinished ? { unfinished: true as const } : {}),
    ...(empty && beginnings.length > 0 && !notebook.broken ? { beginnings } : {}),
  }
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
