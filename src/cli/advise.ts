import { parseArgs } from 'node:util'
import { adviceText } from '../core/advice/adviceText'
import { adviseNext } from '../core/advice/adviseNext'
import { chooseEntry } from './chooseEntry'
import { UsageError, type Outcome, type World } from './outcome'
import { readWhole } from './readWhole'
import { forTerminal } from './forTerminal'

/** `detent advise`. */
export function advise(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { entry: { type: 'string' } } })
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('advise: name one file')
  const notebook = readWhole(path, world)
  const entry = values.entry === undefined ? notebook.entries.at(-1) : chooseEntry(notebook, path, values.entry)
  if (!entry) throw new UsageError(`${path} has no entries yet`)
  return { out: forTerminal(`${entry.key}\n${adviceText(adviseNext(notebook, entry))}`), code: 0 }
}
