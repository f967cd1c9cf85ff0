import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import type { StateSource } from '../../protocol'

/** The state that an address stands for; an address of the git extension's is a file at a revision. */
export function sourceOf(uri: vscode.Uri): StateSource {
  if (uri.scheme !== 'git') return { uri: uri.toString() }
  const { path, ref } = readQuery(uri)
  // The extension's own sign for what is staged.
  return { uri: vscode.Uri.file(path ?? uri.path).toString(), revision: ref === '~' || ref === undefined ? '' : ref }
}

function readQuery({ query }: vscode.Uri): { path?: string; ref?: string } {
  try {
    const said = JSON.parse(query) as { path?: unknown; ref?: unknown }
    return { ...(typeof said.path === 'string' ? { path: said.path } : {}), ...(typeof said.ref === 'string' ? { ref: said.ref } : {}) }
  } catch {
    return {}
  }
}

/** The same file, read in the same way: all but the entry. */
export function isSameText(a: StateSource, b: StateSource): boolean {
  return a.uri === b.uri && a.revision === b.revision && a.saved === b.saved
}

/** The same text without an entry of it named. */
export function wholeOf({ uri, revision, saved }: StateSource): StateSource {
  return { uri, ...(revision === undefined ? {} : { revision }), ...(saved ? { saved } : {}) }
}

/** What a page kept of its sides, perhaps in an older version; `undefined` where it is anything else. */
export function readSource(kept: unknown): StateSource | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined
  const { uri, entry, revision, saved } = kept as Record<string, unknown>
  if (typeof uri !== 'string') return undefined
  return { uri, ...(typeof entry === 'string' ? { entry } : {}), ...(typeof revision === 'string' ? { revision } : {}), ...(saved === true ? { saved } : {}) }
}

/** A revision as people write it: a hash is told by its beginning. */
export function revisionName(revision: string): string {
  return /^[0-9a-f]{40}$/.test(revision) ? revision.slice(0, 7) : revision
}

/** A state in few words, beside its entry. @example 'at main' */
export function wordsOfSource({ revision, saved }: StateSource): string {
  if (revision !== undefined) return revision === '' ? say('as staged') : say`at ${revisionName(revision)}`
  return saved ? say('as saved') : ''
}
