import { architectures } from '../adjusters/architectures'
import { geometryDatum } from '../derived/geometryMoves'
import { logAtHandOf } from '../derived/logOf'
import type { Finding } from '../finding'
import { fileUnits, type DisplayUnits } from '../notation/displayUnits'
import { wordsAt } from '../notebook/machine'
import { recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import { originOf, scalarAt } from '../notebook/tree'
import { lineOf, lineStarts } from '../text'
import { say } from '../words/say'
import { branchesOf } from './branches'
import { cautions } from './cautions'
import { inRows } from './cellColumns'
import { findingIds } from './findingIds'
import { basisOf, knownCell } from './knownCells'
import { rowsOf, type RowSource } from './rows'
import type { Cell, Column, GridFinding, GridView } from './view'

/** The grid of a notebook with its findings marked in place, computed numbers in the units asked for. */
export function buildGrid(notebook: Notebook, findings: readonly Finding[], units = fileUnits): GridView {
  const sources = rowsOf(notebook, units)
  const lineAt = linesOf(notebook.text)
  const ids = findingIds(findings)
  const shown = findings.map((finding, at) => listFinding(finding, ids[at]!, lineAt))
  const rows = sources.map(({ row }) => row.key)
  const about = byColumn(shown, rows)
  const branches = branchesOf(notebook.entries)
  const columns = notebook.entries.map((entry, at): Column => {
    const column = columnOf(entry, about.get(entry.key)?.beside ?? [])
    return branches ? { ...column, branch: branches[at]! } : column
  })
  const cells = cellsOf(notebook, sources, units, (entry, column) => markCells(column, about.get(entry.key)?.marks ?? []))
  const beginnings = notebook.root ? [] : architectures.map(({ key, label, about }) => ({ key, label: say(label), about: say(about) }))
  const empty = notebook.adjusters.size === 0 && notebook.entries.length === 0
  return {
    title: wordsAt(notebook, ['machine', 'name']) ?? '',
    state: notebook.broken ? 'broken' : notebook.newer ? 'newer' : empty ? 'empty' : 'ready',
    ...(notebook.broken ? { trouble: { message: notebook.broken.message, line: lineAt(notebook.broken.range.start) } } : {}),
    ...(notebook.newer ? { readOnly: say('This notebook is written in a newer format. Update Detent to edit it.') } : {}),
    columns, rows: sources.map(({ row }) => row), cells, findings: shown, cautions: cautions.map((words) => say(words)),
    ...(empty && beginnings.length > 0 && !notebook.broken ? { beginnings } : {}),
  }
}

/** Row by row; those of an entry that is the same, and of which all that they stand on is, are the same as last time. */
function cellsOf(notebook: Notebook, sources: readonly RowSource[], units: DisplayUnits, mark: (entry: Entry, column: readonly Cell[]) => readonly Cell[]): Cell[][] {
  const datum = geometryDatum(notebook)
  const rows = nameOfRows(sources)
  const withoutLog = basisOf(units, `${datum} `)
  const columns = notebook.entries.map((entry) => {
    const stamp = logAtHandOf(notebook, entry)?.stamp
    const basis = stamp === undefined ? withoutLog : basisOf(units, `${datum} ${stamp}`)
    const column = recall(entry, rows, basis, () => sources.map((source) => (source.kind === 'group' ? nothing : knownCell(source, notebook, entry, basis))))
    return mark(entry, column)
  })
  return inRows(columns, sources.length, (row) => sources[row]!.kind !== 'group')
}

let rowsBefore = ''

/** What a column of these rows is known by: looked up in every entry, so the very same text as last time is hashed and compared at a glance. */
function nameOfRows(sources: readonly RowSource[]): string {
  const name = `column ${sources.map(({ row }) => row.key).join('\n')}`
  if (name !== rowsBefore) rowsBefore = name
  return rowsBefore
}

type LineAt = (offset: number) => number

/** Lines from 1; the text is looked through when a first one is asked for, which mostly nobody does. */
function linesOf(text: string): LineAt {
  let starts: number[] | undefined
  return (offset) => lineOf(starts ??= lineStarts(text), offset) + 1
}

const listed = new WeakMap<Finding, GridFinding>()

/** The same object for the same finding; one about no entry tells its line, which may have moved. */
function listFinding(finding: Finding, id: number, lineAt: LineAt): GridFinding {
  const known = listed.get(finding)
  if (known?.id === id && known.column !== undefined) return known
  const made = makeFinding(finding, id, lineAt)
  listed.set(finding, made)
  return made
}

function makeFinding(finding: Finding, id: number, lineAt: LineAt): GridFinding {
  const { entry, row } = finding.place ?? {}
  return {
    id, code: finding.code, severity: finding.severity, message: finding.message,
    fixes: (finding.fixes ?? []).map(({ title }) => title),
    ...(entry === undefined ? { line: lineAt(finding.range.start) } : { column: entry }), ...(row === undefined ? {} : { row }),
  }
}

/** What is found about an entry: about cells of it, by their row's index, and about it as a whole. */
interface About {
  marks: { at: number; finding: GridFinding }[]
  beside: number[]
}

function byColumn(findings: readonly GridFinding[], rows: readonly string[]): Map<string, About> {
  const rowAt = new Map(rows.map((key, index) => [key, index]))
  const found = new Map<string, About>()
  for (const finding of findings) {
    if (finding.column === undefined) continue
    const about = found.get(finding.column) ?? { marks: [], beside: [] }
    found.set(finding.column, about)
    const at = rowAt.get(finding.row ?? '')
    if (at === undefined) about.beside.push(finding.id)
    else about.marks.push({ at, finding })
  }
  return found
}

/** By where their entry first stood: it may have moved since. */
const columns = new WeakMap<object, { key: string; findings: string; column: Column }>()

/** The same object as long as the entry says the same and the same is found about it. */
function columnOf(entry: Entry, beside: number[]): Column {
  const origin = originOf(entry.node)
  const known = columns.get(origin)
  const findings = beside.join()
  if (known?.key === entry.key && known.findings === findings) return known.column
  const column = makeColumn(entry, beside)
  columns.set(origin, { key: entry.key, findings, column })
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

const rank = { error: 0, warning: 1, info: 2 }

/** A group's row has no cells. */
const nothing: Cell = { state: 'empty', text: '' }

const marked = new WeakMap<readonly Cell[], { signature: string; cells: readonly Cell[] }>()

/** The cells of an entry with what is found about them, the same as last time where both are. */
function markCells(column: readonly Cell[], marks: About['marks']): readonly Cell[] {
  if (marks.length === 0) return column
  const signature = marks.map(({ at, finding: { id, severity } }) => `${at} ${id} ${severity}`).join()
  const known = marked.get(column)
  if (known?.signature === signature) return known.cells
  const cells = [...column]
  for (const { at, finding } of [...marks].sort((a, b) => rank[a.finding.severity] - rank[b.finding.severity])) {
    const cell = cells[at]!
    // The cell itself is known for the next version, which may have other findings.
    cells[at] = { ...cell, findings: [...(cell.findings ?? []), finding.id], worst: cell.worst ?? finding.severity }
  }
  marked.set(column, { signature, cells })
  return cells
}
