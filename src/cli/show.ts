import { parseArgs } from 'node:util'
import type { Entry, Notebook } from '../core/notebook/notebook'
import { readNotebook } from '../core/notebook/readNotebook'
import { lineAndColumn } from '../core/text'
import { chooseEntry } from './chooseEntry'
import { UsageError, type Outcome, type World } from './outcome'
import { readWhole } from './readWhole'
import { statesAsText } from './statesAsText'

export const showUsage = `detent show FILE [--entry ID | --all] [--or-text]

Prints the state the machine is in after an entry (the last one, when none is named) as a table: where everything stands,
the sag measured, the reason. The same state is the same table, on any day and at any width. --all prints what the
notebook says of the machine and every entry, oldest first; --or-text prints a text that does not parse as it is, with
its error above it, so that git can show either.`

/** `detent show`. */
export function show(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true,
    options: { entry: { type: 'string' }, all: { type: 'boolean', default: false }, 'or-text': { type: 'boolean', default: false } },
  })
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('show: name one file')
  const all = values.all === true
  if (all && values.entry !== undefined) throw new UsageError('show: either --entry or --all')
  const notebook = values['or-text'] ? readNotebook(world.read(path)) : readWhole(path, world)
  if (notebook.broken) return { out: withItsError(notebook), code: 0 }
  return { out: statesAsText(notebook, chosen(notebook, path, values.entry, all), all), code: 0 }
}

function chosen(notebook: Notebook, path: string, id: string | undefined, all: boolean): readonly Entry[] {
  if (all) return notebook.entries
  return id === undefined ? notebook.entries.slice(-1) : [chooseEntry(notebook, path, id)]
}

function withItsError({ text, broken }: Notebook): string {
  const { line } = lineAndColumn(text, broken!.range.start)
  return `This text does not parse: line ${line + 1}: ${broken!.message}\n\n${text}${text === '' || text.endsWith('\n') ? '' : '\n'}`
}
