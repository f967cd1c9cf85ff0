import * as vscode from 'vscode'
import type { Finding } from '../../core/finding'
import type { Notebook } from '../../core/notebook/notebook'
import { isNotebook, notebookPattern, type Notebooks } from '../notebooks'

/** A notebook of the workspace, as it is in the editor where it is open, else as it is on disk. */
export interface KnownNotebook {
  uri: vscode.Uri
  notebook: Notebook
  findings: readonly Finding[]
}

/** What other tools keep is nobody's setup. */
const excluded = '**/{node_modules,.git}/**'
/** Changes of one file that come in quick succession, such as keys, are read together. */
const restMs = 200

/**
 * All notebooks of the workspace's folders. They are found and read when somebody first asks; from then on only what
 * changed is read again. What cannot be read is left out.
 */
export class WorkspaceNotebooks implements vscode.Disposable {
  readonly #known = new Map<string, KnownNotebook>()
  readonly #changed = new vscode.EventEmitter<vscode.Uri | undefined>()
  readonly #waiting = new Map<string, ReturnType<typeof setTimeout>>()
  readonly #subscriptions: vscode.Disposable[]
  #reading: { done: Promise<void>; cancel: vscode.CancellationTokenSource } | undefined

  /** Fires with the notebook that changed; without one when any may have come or gone. */
  readonly onDidChange = this.#changed.event

  constructor(readonly notebooks: Notebooks) {
    const watcher = vscode.workspace.createFileSystemWatcher(notebookPattern)
    const gone = vscode.workspace.createFileSystemWatcher('**', true, true, false)
    const again = (uri: vscode.Uri) => this.#soon(uri.toString(), () => this.#readAgain(uri))
    this.#subscriptions = [
      this.#changed, watcher,
      watcher.onDidChange(again),
      // A file that came is looked for rather than taken: it may be excluded.
      watcher.onDidCreate(() => this.#soon('', () => this.#findAgain())),
      // Of a folder that goes only the folder is told, which the pattern of notebooks does not match.
      gone, gone.onDidDelete((uri) => this.#forget(uri)),
      vscode.workspace.onDidRenameFiles(() => this.#soon('', () => this.#findAgain())),
      notebooks.onDidChange(({ uri }) => this.#known.has(uri.toString()) && again(uri)),
      // What was typed and not saved is gone with its document.
      vscode.workspace.onDidCloseTextDocument((document) => isNotebook(document) && this.#known.has(document.uri.toString()) && again(document.uri)),
      vscode.workspace.onDidChangeWorkspaceFolders(() => this.refresh()),
      vscode.workspace.onDidChangeConfiguration((event) => ['detent.rules', 'files.exclude'].some((section) => event.affectsConfiguration(section)) && this.refresh()),
    ]
  }

  /** All of them, in the order of their paths; those read so far where `token` is cancelled on the way. */
  async all(token?: vscode.CancellationToken): Promise<KnownNotebook[]> {
    this.#reading ??= this.#start()
    const cancelled = new Promise<void>((resolve) => token?.onCancellationRequested(() => resolve()))
    await Promise.race([this.#reading.done, cancelled])
    return [...this.#known.values()].sort((a, b) => (a.uri.path < b.uri.path ? -1 : 1))
  }

  /** Finds and reads all anew, when somebody asks; a reading on its way is given up. */
  refresh(): void {
    this.#reading?.cancel.cancel()
    this.#reading = undefined
    this.#known.clear()
    this.#changed.fire(undefined)
  }

  dispose(): void {
    this.#reading?.cancel.cancel()
    for (const timer of this.#waiting.values()) clearTimeout(timer)
    for (const each of this.#subscriptions) each.dispose()
  }

  #start(): { done: Promise<void>; cancel: vscode.CancellationTokenSource } {
    const cancel = new vscode.CancellationTokenSource()
    return { done: this.#find(cancel.token), cancel }
  }

  async #find(token: vscode.CancellationToken): Promise<void> {
    const found = await vscode.workspace.findFiles(notebookPattern, excluded, undefined, token)
    for (const uri of found) {
      if (token.isCancellationRequested) return
      if (!this.#known.has(uri.toString())) await this.#read(uri, token)
    }
  }

  /** Leaves out what stood at a path or below it. */
  #forget(uri: vscode.Uri): void {
    const at = uri.toString()
    const lost = [...this.#known.keys()].filter((known) => known === at || known.startsWith(`${at}/`))
    for (const known of lost) this.#known.delete(known)
    if (lost.length > 0) this.#changed.fire(undefined)
  }

  /** Looks for files that came since, when all were found before. */
  async #findAgain(): Promise<void> {
    if (!this.#reading) return
    await this.#reading.done
    const before = this.#known.size
    this.#reading = this.#start()
    await this.#reading.done
    if (this.#known.size !== before) this.#changed.fire(undefined)
  }

  async #readAgain(uri: vscode.Uri): Promise<void> {
    if (!this.#known.has(uri.toString())) return
    await this.#read(uri)
    this.#changed.fire(uri)
  }

  async #read(uri: vscode.Uri, token?: vscode.CancellationToken): Promise<void> {
    const open = vscode.workspace.textDocuments.find((document) => document.uri.toString() === uri.toString())
    try {
      const reading = open ? this.notebooks.of(open) : this.notebooks.read(new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)))
      if (!token?.isCancellationRequested) this.#known.set(uri.toString(), { uri, notebook: reading.notebook, findings: reading.findings })
    } catch {
      this.#known.delete(uri.toString())
    }
  }

  #soon(key: string, act: () => Promise<void>): void {
    clearTimeout(this.#waiting.get(key))
    this.#waiting.set(key, setTimeout(() => void act(), restMs))
  }
}
