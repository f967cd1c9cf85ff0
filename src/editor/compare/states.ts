import * as vscode from 'vscode'
import type { StateRef } from '../../core/compare/comparison'
import { heldAs } from '../../core/compare/heldAs'
import type { Notebook } from '../../core/notebook/notebook'
import { readNotebook } from '../../core/notebook/readNotebook'
import { say } from '../../core/words/say'
import type { StateSource } from '../../protocol'
import type { Analysis, Notebooks } from '../notebooks'
import type { Revisions } from './revisions'
import { revisionName } from './sources'

type Reading = Omit<Analysis, 'version'>

/** Reads states from wherever they are: documents, the disk, git. */
export class States {
  /** The last reading of each text that is in no document, so that one that has not changed is not read again. */
  readonly #readings = new Map<string, { text: string; reading: Reading }>()

  constructor(readonly notebooks: Notebooks, readonly revisions: Revisions) {}

  /** A state. Where there is none, the answer says why in `missing`. */
  async read(source: StateSource): Promise<StateRef> {
    const uri = vscode.Uri.parse(source.uri)
    if (source.revision !== undefined) return this.#atRevision(source, uri, source.revision)
    return source.saved ? this.#asSaved(source, uri) : this.#asItIs(source, uri)
  }

  /** Forgets what was read before: the rules speak otherwise now. */
  forget(): void {
    this.#readings.clear()
  }

  async #asItIs(source: StateSource, uri: vscode.Uri): Promise<StateRef> {
    const name = nameOf(uri)
    try {
      const document = await vscode.workspace.openTextDocument(uri)
      // A document outlives its file for a while.
      if (!document.isDirty && !document.isUntitled) await vscode.workspace.fs.stat(uri)
      const file = document.isDirty ? say`${name}, not saved yet` : name
      const held = vscode.workspace.fs.isWritableFileSystem(uri.scheme) === false ? { readOnly: say('this file cannot be written') } : {}
      return entered(source, { file, ...held, ...this.notebooks.of(document) })
    } catch {
      return missing(name, say`${name} cannot be read; it may have been moved or deleted.`)
    }
  }

  async #asSaved(source: StateSource, uri: vscode.Uri): Promise<StateRef> {
    const [file, readOnly] = [say`${nameOf(uri)}, as saved`, say('as it was last saved')]
    try {
      const text = new TextDecoder().decode(await vscode.workspace.fs.readFile(uri))
      return entered(source, { file, readOnly, ...this.#reading(source, text) })
    } catch {
      return { ...missing(file, say`${nameOf(uri)} has not been saved yet, or was moved or deleted.`), readOnly }
    }
  }

  async #atRevision(source: StateSource, uri: vscode.Uri, revision: string): Promise<StateRef> {
    const held = (notebook: Notebook) => heldAs(notebook, revision === '' ? undefined : revisionName(revision))
    const found = await this.revisions.read(uri, revision)
    if ('missing' in found) return { ...missing(`${revisionName(revision)}:${nameOf(uri)}`, found.missing), readOnly: held(nothing) }
    const reading = this.#reading(source, found.text)
    return entered(source, { file: `${revisionName(revision)}:${nameOf(found.uri)}`, readOnly: held(reading.notebook), ...reading })
  }

  #reading({ uri, revision }: StateSource, text: string): Reading {
    const key = JSON.stringify([uri, revision])
    const known = this.#readings.get(key)
    const reading = known?.text === text ? known.reading : this.notebooks.read(text)
    this.#readings.set(key, { text, reading })
    // Logs lie beside the file, whichever version of it names them.
    return this.notebooks.beside(reading, vscode.Uri.parse(uri), revision ?? 'saved')
  }
}

/** The reference with its entry, where the notebook has the one that is named. */
function entered({ entry }: StateSource, ref: StateRef): StateRef {
  const { notebook, file, readOnly, findings } = ref
  const plain = { notebook, file, ...(readOnly === undefined ? {} : { readOnly }), ...(findings ? { findings } : {}) }
  if (entry === undefined || notebook.broken) return plain
  const found = notebook.entries.find(({ key }) => key === entry)
  return found ? { ...plain, entry: found } : { ...plain, missing: say`${file} has no entry ‘${entry}’.` }
}

const nothing = readNotebook('')

function missing(file: string, why: string): StateRef {
  return { notebook: nothing, file, missing: why }
}

function nameOf(uri: vscode.Uri): string {
  return vscode.workspace.asRelativePath(uri, false)
}
