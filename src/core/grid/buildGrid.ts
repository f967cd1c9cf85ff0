import { architectures } from '../adjusters/architectures'
import { geometryDatum } from '../derived/geometryMoves'
import { logAtHandOf } from '../derived/logOf'
import type { Finding } from '../finding'
import { fileUnits, type DisplayUnits } from '../notation/displayUnits'
import { wordsAt } from '../notebook/machine'
import { recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import { lineOf, lineStarts } from '../text'
import { say } from '../words/say'
import { branchesOf } from './branches'
import { cautions } from './cautions'
import { basisOf, knownCell } from './knownCells'
import { rowsOf, type RowSource } from './rows'
import type { Cell, Column, GridFinding, GridView } from './view'

/** The grid of a notebook with its findings marked in place, computed numbers in the units asked for. The findings keep their order as ids. */
export function buildGrid(notebook: Notebook, findings: readonly Finding[], units = fileUnits): GridView {
  const sources = rowsOf(notebook, units)
  const starts = lineStarts(notebook.text)
  const listed = findings.map((finding, id) => listFinding(finding, id, starts))
  const besideCells = findingsBesideCells(listed, new Set(sources.map(({ row }) => row.key)))
  const branches = branchesOf(notebook.entries)
  const columns = notebook.entries.map((entry, at) => ({ ...columnOf(entry, besideCells.get(entry.key) ?? []), ...(branches ? { branch: branches[at]! } : {}) }))
  const cells = cellsOf(notebook, sources, units)
  markCells(cells, sources.map(({ row }) => row.key), columns, listed)
  const beginnings = notebook.root ? [] : architectures.map(({ key, label, about }) => ({ key, label: say(label), about: say(about) }))
  const empty = notebook.adjusters.size === 0 && notebook.entries.length === 0
  return {
    title: wordsAt(notebook, ['machine', 'name']) ?? '',
    state: notebook.broken ? 'broken' : notebook.newer ? 'newer' : empty ? 'empty' : 'ready',
    ...(notebook.broken ? { trouble: { message: notebook.broken.message, line: lineOf(starts, notebook.broken.range.start) + 1 } } : {}),
    ...(notebook.newer ? { readOnly: say('This notebook is written in a newer format. Update Detent to edit it.') } : {}),
    columns, rows: sources.map(({ row }) => row), cells, findings: listed, cautions: cautions.map((words) => say(words)),
    ...(empty && beginnings.length > 0 && !notebook.broken ? { beginnings } : {}),
  }
}

/** Row by row; those of an entry that is the same, and of which all that they stand on is, are the same as last time. */
function cellsOf(notebook: Notebook, sources: readonly RowSource[], units: DisplayUnits): Cell[][] {
  const datum = geometryDatum(notebook)
  const cells: Cell[][] = sources.map(() => [])
  const filled = sources.flatMap((source, at) => (source.kind === 'group' ? [] : [{ source, row: cells[at]! }]))
  const rows = sources.map(({ row }) => row.key).join('\n')
  for (const entry of notebook.entries) {
    const basis = basisOf(units, `${datum} ${logAtHandOf(notebook, entry)?.stamp ?? ''}`)
    const column = recall(entry, `column ${rows}`, basis, () => filled.map(({ source }) => knownCell(source, notebook, entry, basis)))
    for (let at = 0; at < filled.length; at++) filled[at]!.row.push(column[at]!)
  }
  return cells
}

function listFinding(finding: Finding, id: number, starts: readonly number[]): GridFinding {
  const { entry, row } = finding.place ?? {}
  return {
    id, code: finding.code, severity: finding.severity, message: finding.message, line: lineOf(starts, finding.range.start) + 1,
    fixes: (finding.fixes ?? []).map(({ title }) => title),
    ...(entry === undefined ? {} : { column: entry }), ...(row === undefined ? {} : { row }),
  }
}

/** Findings about an entry that have no cell to stand in, by column. */
function findingsBesideCells(findings: readonly GridFinding[], rows: ReadonlySet<string>): Map<string, number[]> {
  const found = new Map<string, number[]>()
  for (const { id, column, row } of findings) {
    if (column !== undefined && (row === undefined || !rows.has(row))) found.set(column, [...(found.get(column) ?? []), id])
  }
  return found
}

function columnOf(entry: Entry, findings: number[]): Column {
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

function markCells(cells: Cell[][], rows: readonly string[], columns: readonly Column[], findings: readonly GridFinding[]): void {
  const rowAt = new Map(rows.map((key, index) => [key, index]))
  const columnAt = new Map(columns.map(({ key }, index) => [key, index]))
  for (const finding of [...findings].sort((a, b) => rank[a.severity] - rank[b.severity])) {
    const row = cells[rowAt.get(finding.row ?? '') ?? -1]
    const column = columnAt.get(finding.column ?? '') ?? -1
    const cell = row?.[column]
    // The cell is known for the next version, which may have other findings.
    if (row && cell) row[column] = { ...cell, findings: [...(cell.findings ?? []), finding.id], worst: cell.worst ?? finding.severity }
  }
}
