import * as vscode from 'vscode'
import type { GridPlace } from '../../core/grid/view'
import { fieldNodes, findField } from '../../core/notebook/fields'
import { toRange } from '../convert'
import type { Notebooks } from '../notebooks'
import { reopen } from './reopen'

/** Reopens a notebook as text, at a cell's value or a line where one is named. */
export async function openAsText(document: vscode.TextDocument, notebooks: Notebooks, at: { place?: GridPlace; line?: number } = {}): Promise<void> {
  const selection = at.place ? rangeOf(document, notebooks, at.place) : at.line === undefined ? undefined : lineRange(document, at.line)
  await reopen(document.uri, 'default', selection ? { selection } : {})
}

function lineRange(document: vscode.TextDocument, line: number): vscode.Range {
  const { range } = document.lineAt(Math.max(0, Math.min(line - 1, document.lineCount - 1)))
  return new vscode.Range(range.start, range.start)
}

/** Where a cell's value stands in the text: its own, else the entry's name. */
function rangeOf(document: vscode.TextDocument, notebooks: Notebooks, { column, row }: GridPlace): vscode.Range | undefined {
  const entry = notebooks.of(document).notebook.entries.find(({ key }) => key === column)
  if (!entry) return undefined
  const field = findField(row)
  const nodes = field ? fieldNodes(entry, field) : [entry.settings.get(row.slice('settings/'.length))?.node].flatMap((node) => node ?? [])
  const [first, last] = [nodes[0], nodes.at(-1)]
  return toRange(document, first && last ? { start: first.range.start, end: last.range.end } : entry.range)
}
