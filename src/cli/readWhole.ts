import type { Notebook } from '../core/notebook/notebook'
import { readNotebook } from '../core/notebook/readNotebook'
import { lineAndColumn } from '../core/text'
import { UsageError, type World } from './outcome'

/**
 * A notebook that was understood as far as its syntax goes.
 *
 * @throws UsageError where it cannot be read or its text is broken, with the place
 */
export function readWhole(path: string, world: World): Notebook {
  const notebook = readNotebook(world.read(path))
  if (!notebook.broken) return notebook
  const { line, column } = lineAndColumn(notebook.text, notebook.broken.range.start)
  throw new UsageError(`${path}:${line + 1}:${column + 1}: ${notebook.broken.message}`)
}
