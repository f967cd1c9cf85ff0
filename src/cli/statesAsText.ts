import { factsOf } from '../core/compare/factsOf'
import { oneLine } from '../core/compare/oneLine'
import { cellOf } from '../core/grid/cells'
import { rowsOf, type RowSource } from '../core/grid/rows'
import { wordsAt } from '../core/notebook/machine'
import type { Entry, Notebook } from '../core/notebook/notebook'

/** Where values begin, whatever else is in the table: a line says the same as long as its row does. A longer label pushes its own value only. */
const valueColumn = 51

/**
 * States as tables for people and for git: nothing in them depends on the day, on the path or on other rows, so that a
 * line differs only where what it tells does.
 *
 * @param withFacts also what is told beside the entries, a fact a line
 */
export function statesAsText(notebook: Notebook, entries: readonly Entry[], withFacts: boolean): string {
  const title = oneLine(wordsAt(notebook, ['machine', 'name']) ?? '') || 'a machine without a name'
  const tables = entries.map((entry) => stateTable(notebook, entry))
  return [title, ...(withFacts ? [factTable(notebook)] : []), ...(tables.length > 0 ? tables : ['no entries yet\n'])].join('\n')
}

function factTable({ root }: Notebook): string {
  const told = (root?.pairs ?? []).filter(({ key }) => key.text !== 'entries')
  const facts = told.flatMap(({ key, value }) => [...factsOf(value, key.text)])
  return [...facts.map(([path, text]) => tableLine(`  ${oneLine(path)}`, oneLine(text))), ''].join('\n')
}

/** One entry's state as lines of label, value and unit; rows that hold nothing are left out. */
function stateTable(notebook: Notebook, entry: Entry): string {
  const lines: string[] = []
  let heading: string | undefined
  for (const source of rowsOf(notebook)) {
    if (source.kind === 'group') heading = source.row.label
    else for (const line of rowLine(source, notebook, entry)) {
      if (heading !== undefined) lines.push(heading)
      heading = undefined
      lines.push(line)
    }
  }
  return [headLine(entry), ...lines, ''].join('\n')
}

function headLine(entry: Entry): string {
  const marks = [entry.date?.value, entry.from && `from ${entry.from.value}`, entry.asFound && 'as found', entry.baseline && 'baseline']
  return oneLine([entry.key, ...marks.filter(Boolean)].join(' · '))
}

function rowLine(source: Exclude<RowSource, { kind: 'group' }>, notebook: Notebook, entry: Entry): string[] {
  const cell = cellOf(source, notebook, entry)
  if (cell.text === '' && cell.remark === undefined) return []
  const { label, detail, unit } = source.row
  const shown = unit && /^[\d.+\-± ]+$/.test(cell.text) ? `${cell.text} ${unit}` : cell.text
  const remark = cell.remark === undefined ? [] : [`# ${cell.remark}`]
  return [tableLine(`  ${oneLine(label)}${detail ? `, ${detail}` : ''}`, [...(shown === '' ? [] : [shown]), ...remark].map(oneLine).join('  '))]
}

function tableLine(label: string, value: string): string {
  return `${label.padEnd(valueColumn - 2)}  ${value}`
}
