import type { StateRef } from '../core/compare/comparison'
import { readNotebook } from '../core/notebook/readNotebook'
import { lineAndColumn } from '../core/text'
import { readAtRevision } from './atRevision'
import { chooseEntry } from './chooseEntry'
import { UsageError, type World } from './outcome'
import { readStateSpec, type StateSpec } from './stateSpec'

/** A state named on the command line, read. */
export interface ReadState {
  spec: StateSpec
  ref: StateRef
}

/**
 * The two states that a command is about. Where one does not parse, or both do not, each is told with its place.
 *
 * @throws UsageError for everything that keeps them from being read
 */
export function readTwoStates(command: string, args: readonly string[], world: World): [ReadState, ReadState] {
  const [a, b, ...more] = args
  if (a === undefined || b === undefined || more.length > 0) throw new UsageError(`${command}: name two states, each as FILE, FILE#ENTRY or REVISION:FILE#ENTRY`)
  const specs = [readStateSpec(a), readStateSpec(b)]
  const read = specs.map((spec) => ({ spec, ref: notebookOf(spec, world) }))
  const troubles = [...new Set(read.flatMap(({ spec, ref }) => troubleOf(spec, ref)))]
  if (troubles.length > 0) throw new UsageError(troubles.join('\n'))
  return read.map(({ spec, ref }) => ({ spec, ref: withNamedEntry(spec, ref) })) as [ReadState, ReadState]
}

function notebookOf({ revision, path }: StateSpec, world: World): StateRef {
  if (revision === undefined) return { notebook: readNotebook(world.read(path)), file: path }
  return { notebook: readNotebook(readAtRevision(revision, path, world.git)), file: `${revision}:${path}`, readOnly: revision === '' ? 'as it is staged' : `as it is in ${revision}` }
}

/** Why a side cannot be compared, as a place and a sentence. */
function troubleOf({ path, revision }: StateSpec, { notebook, file }: StateRef): string[] {
  if (!notebook.broken) return []
  const { line, column } = lineAndColumn(notebook.text, notebook.broken.range.start)
  const isConflict = revision === undefined && /^<{7}(?: |\r?$)/m.test(notebook.text) && /^>{7}(?: |\r?$)/m.test(notebook.text)
  if (!isConflict) return [`${file}:${line + 1}:${column + 1}: ${notebook.broken.message}`]
  const first = lineAndColumn(notebook.text, notebook.text.search(/^<{7}(?: |\r?$)/m)).line + 1
  return [`${file}:${first}: this file is in conflict; settle it first, or compare its sides: :2:${path} is ours and :3:${path} is theirs`]
}

function withNamedEntry({ entry }: StateSpec, ref: StateRef): StateRef {
  return entry === undefined ? ref : { ...ref, entry: chooseEntry(ref.notebook, ref.file, entry) }
}
