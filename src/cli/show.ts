import { parseArgs } from 'node:util'
import type { Entry, Notebook } from '../core/notebook/notebook'
import { readNotebook } from '../core/notebook/readNotebook'
import { lineAndColumn } from '../core/text'
import { makeSheet } from '../core/sheet/makeSheet'
import { sheetHtml } from '../core/sheet/sheetHtml'
import { oneOf } from './check'
import { chooseEntry } from './chooseEntry'
import { UsageError, type Outcome, type World } from './outcome'
import { readWhole } from './readWhole'
import { statesAsText } from './statesAsText'
import { forTerminal } from './forTerminal'

/** `detent show`. */
export function show(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true,
    options: { entry: { type: 'string' }, all: { type: 'boolean', default: false }, format: { type: 'string', default: 'text' }, 'or-text': { type: 'boolean', default: false } },
  })
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('show: name one file')
  const all = values.all === true
  if (all && values.entry !== undefined) throw new UsageError('show: either --entry or --all')
  const format = oneOf(values.format!, ['text', 'html'] as const, '--format')
  if (format === 'html' && (all || values['or-text'])) throw new UsageError('show: --format html is one page for one entry; leave --all and --or-text out')
  const notebook = values['or-text'] ? readNotebook(world.read(path)) : readWhole(path, world)
  if (notebook.broken) return { out: forTerminal(withItsError(notebook)), code: 0 }
  const entries = chosen(notebook, path, values.entry, all)
  if (format === 'text') return { out: forTerminal(statesAsText(notebook, entries, all)), code: 0 }
  if (!entries[0]) throw new UsageError(`${path} has no entries yet`)
  return { out: sheetHtml(makeSheet(notebook, entries[0])), code: 0 }
}

function chosen(notebook: Notebook, path: string, id: string | undefined, all: boolean): readonly Entry[] {
  if (all) return notebook.entries
  return id === undefined ? notebook.entries.slice(-1) : [chooseEntry(notebook, path, id)]
}

function withItsError({ text, broken }: Notebook): string {
  const { line } = lineAndColumn(text, broken!.range.start)
  return `This text does not parse: line ${line + 1}: ${broken!.message}\n\n${text}${text === '' || text.endsWith('\n') ? '' : '\n'}`
}
