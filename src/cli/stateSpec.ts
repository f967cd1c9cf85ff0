import { UsageError } from './outcome'

/** What a person names a state by: `FILE`, `FILE#ENTRY`, `REVISION:FILE` or `REVISION:FILE#ENTRY`. */
export interface StateSpec {
  /** A revision of git; empty for what is staged, `:1` to `:3` for the sides of a conflict. Absent for the file as it is. */
  revision?: string
  path: string
  /** An entry's id, or its place in the file as `#3`. */
  entry?: string
}

/**
 * Reads how a state is named. A drive such as `C:\x.setup.yaml` is no revision, and neither is what begins as a path
 * does; a file whose name has a colon is written `./a:b.setup.yaml`, as git asks for too.
 *
 * @example readStateSpec('main~2:bikes/tern.setup.yaml#run-3') // { revision: 'main~2', path: 'bikes/tern.setup.yaml', entry: 'run-3' }
 */
export function readStateSpec(text: string): StateSpec {
  const colon = colonOf(text)
  const { path, entry } = withoutEntry(colon === undefined ? text : text.slice(colon + 1))
  if (path === '') throw new UsageError(`‘${text}’ names no file; write FILE, FILE#ENTRY or REVISION:FILE`)
  if (entry === '') throw new UsageError(`‘${text}’ names no entry behind the #`)
  const revision = colon === undefined ? undefined : text.slice(0, colon)
  // git would take it for an option.
  if (revision?.startsWith('-')) throw new UsageError(`‘${revision}’ is no revision`)
  return { path, ...(revision === undefined ? {} : { revision }), ...(entry === undefined ? {} : { entry }) }
}

/** The colon between revision and path; those inside of `^{/…}` belong to the revision. */
function colonOf(text: string): number | undefined {
  if (/^([A-Za-z]:)?[\\/]|^\.{1,2}([\\/]|$)/.test(text)) return undefined
  const stage = /^:[0-3](?=:)/.exec(text)
  if (stage) return stage[0].length
  let depth = 0
  for (let at = 0; at < text.length; at++) {
    // A colon behind the file's name belongs to an entry.
    if (depth === 0 && text[at] === '#') return undefined
    if (text[at] === '{') depth++
    else if (text[at] === '}') depth--
    else if (text[at] === ':' && depth <= 0) return at
  }
  return undefined
}

/** An entry's id may hold a #, and so may a folder; the first behind a file's ending parts the two. */
function withoutEntry(text: string): { path: string; entry?: string } {
  const ending = /\.ya?ml#/i.exec(text)
  const at = ending ? ending.index + ending[0].length - 1 : text.indexOf('#')
  return at < 0 ? { path: text } : { path: text.slice(0, at), entry: text.slice(at + 1) }
}
