import { parseArgs } from 'node:util'
import { cellOf } from '../core/grid/cells'
import { rowsOf, type RowSource } from '../core/grid/rows'
import { wordsAt } from '../core/notebook/machine'
import type { Entry, Notebook } from '../core/notebook/notebook'
import { chooseEntry } from './chooseEntry'
import { UsageError, type Outcome, type World } from './outcome'
import { readWhole } from './readWhole'

export const showUsage = `detent show FILE [--entry ID | --all]

Prints the state the machine is in after an entry (the last one, when none is named) as a table that stays the same for
the same state: where everything stands, the sag measured, the reason. --all prints every entry, oldest first.`

/** `detent show`. */
export function show(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { entry: { type: 'string' }, all: { type: 'boolean', default: false } } })
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('show: name one file')
  const notebook = readWhole(path, world)
  const entries = chosen(notebook, path, values.entry, values.all === true)
  const title = wordsAt(notebook, ['machine', 'name']) ?? path
  const tables = entries.map((entry) => stateTable(notebook, entry))
  return { out: [title, ...(tables.length > 0 ? tables : ['no entries yet\n'])].join('\n'), code: 0 }
}

function chosen(notebook: Notebook, path: string, id: string | undefined, all: boolean): readonly Entry[] {
  if (all) return notebook.entries
  return id === undefined ? notebook.entries.slice(-1) : [chooseEntry(notebook, path, id)]
}

/** One entry's state as lines of label, value and unit; rows that hold nothing are left out. */
function stateTable(notebook: Notebook, entry: Entry): string {
  const rows = rowsOf(notebook)
  const lines: [string, string][] = []
  for (const [at, source] of rows.entries()) {
    if (source.kind === 'group') {
      if (filledBelow(rows, at, notebook, entry)) lines.push([source.row.label, ''])
    } else lines.push(...rowLine(source, notebook, entry))
  }
  const width = Math.max(0, ...lines.map(([label]) => label.length))
  const body = lines.map(([label, value]) => (value === '' ? label : `${label.padEnd(width)}  ${value}`))
  return [headLine(entry), ...body, ''].join('\n')
}

function headLine(entry: Entry): string {
  const marks = [entry.date?.value, entry.from && `from ${entry.from.value}`, entry.asFound && 'as found', entry.baseline && 'baseline']
  return [entry.key, ...marks.filter(Boolean)].join(' · ')
}

function rowLine(source: Exclude<RowSource, { kind: 'group' }>, notebook: Notebook, entry: Entry): [string, string][] {
  const cell = cellOf(source, notebook, entry)
  if (cell.text === '') return []
  const { label, detail, unit } = source.row
  const shown = unit && /^[\d.+\-−±, ]+$/.test(cell.text) ? `${cell.text} ${unit}` : cell.text
  return [[`  ${label}${detail ? `, ${detail}` : ''}`, shown.replace(/\s*\n\s*/g, ' / ')]]
}

function filledBelow(rows: readonly RowSource[], at: number, notebook: Notebook, entry: Entry): boolean {
  for (const source of rows.slice(at + 1)) {
    if (source.kind === 'group') return false
    if (cellOf(source, notebook, entry).text !== '') return true
  }
  return false
}
