import * as vscode from 'vscode'
import type { Finding } from '../../core/finding'
import type { Notebook } from '../../core/notebook/notebook'
import { say } from '../../core/words/say'
import { isNotebook, notebookPattern, type Notebooks } from '../notebooks'
import { showProgress } from '../showProgress'
import { stretches } from '../stretches'
import { KeptReadings } from './keptReadings'

/** A notebook of the workspace, as it is in the editor where it is open, else as it is on disk. */
export interface KnownNotebook {
  uri: vscode.Uri
  notebook: Notebook
  findings: readonly Finding[]
  /** It is open, and long, and its findings are still being worked out. */
  unfinished?: true
}

/** A look for all notebooks there are, and the reading of them. */
interface Round {
  done: Promise<void>
  stop: AbortController
}

/** What other tools keep is nobody's setup. */
const excluded = '**/{node_modules,.git}/**'
/** Changes that come in quick succession, such as keys or a checkout, are read together. */
const restMs = 200
/** Reading that is done sooner is not worth a message. */
const patienceMs = 2500

/**
 * All notebooks of the workspace's folders. They are found and read when somebody first asks; from then on only what
 * changed is read again. What cannot be read is left out.
 */
export class WorkspaceNotebooks implements vscode.Disposable {
  readonly #kept: KeptReadings<KnownNotebook>
  readonly #changed = new vscode.EventEmitter<vscode.Uri | undefined>()
  readonly #read = new vscode.EventEmitter<void>()
  readonly #touched = new Set<string>()
  readonly #subscriptions: vscode.Disposable[]
  readonly #pause = stretches()
  #resting: ReturnType<typeof setTimeout> | undefined
  #came = false
  #typedAt = -Infinity
  /** The findings of a text are others when the rules speak otherwise. */
  #rules = 0
  #round: Round | undefined

  /** Fires with the notebook that changed; without one when any may have come, gone or changed. */
  readonly onDidChange = this.#changed.event
  /** Fires when all were read, or reading was cancelled. */
  readonly onDidRead = this.#read.event

  constructor(readonly notebooks: Notebooks) {
    this.#kept = new KeptReadings({ stamp: (key) => this.#stampOf(key), read: (key, earlier) => this.#readOne(key, earlier), giveWay: () => this.#giveWay() })
    const watcher = vscode.workspace.createFileSystemWatcher(notebookPattern)
    const gone = vscode.workspace.createFileSystemWatcher('**', true, true, false)
    this.#subscriptions = [
      this.#changed, this.#read, watcher,
      watcher.onDidChange((uri) => this.#touch(uri)),
      // A file that came is looked for rather than taken: it may be excluded.
      watcher.onDidCreate((uri) => this.#come(uri)),
      // Of a folder that goes only the folder is told, which the pattern of notebooks does not match.
      gone, gone.onDidDelete((uri) => this.#forget(uri)),
      vscode.workspace.onDidRenameFiles(() => this.#come()),
      notebooks.onDidChange(({ uri }) => this.#typed(uri)),
      // What was typed and not saved is gone with its document.
      vscode.workspace.onDidCloseTextDocument((document) => isNotebook(document) && this.#touch(document.uri)),
      vscode.workspace.onDidChangeWorkspaceFolders(() => this.refresh()),
      vscode.workspace.onDidChangeConfiguration((event) => this.#heed(event)),
    ]
  }

  /** So many were not read, since reading was cancelled. */
  get left(): number {
    return this.#round?.stop.signal.aborted ? this.#kept.left : 0
  }

  /** All of them, in the order of their paths; those read so far where a person cancelled it. */
  async all(): Promise<KnownNotebook[]> {
    await this.#rounds()
    return this.#kept.all.sort((a, b) => (a.uri.path < b.uri.path ? -1 : 1))
  }

  /** One of them. */
  async get(uri: vscode.Uri): Promise<KnownNotebook | undefined> {
    await this.#rounds()
    return this.#kept.get(uri.toString())
  }

  /** Looks for all anew, when somebody asks, and reads what changed; a look on its way is given up. */
  refresh(): void {
    this.#round?.stop.abort()
    this.#round = undefined
    this.#changed.fire(undefined)
  }

  dispose(): void {
    this.#round?.stop.abort()
    clearTimeout(this.#resting)
    for (const each of this.#subscriptions) each.dispose()
  }

  /** Ends with the newest round, whichever was on its way before. */
  async #rounds(): Promise<void> {
    let round: Round
    do {
      round = this.#round ??= this.#start()
      await round.done
    } while (round !== this.#round)
  }

  #start(): Round {
    const stop = new AbortController()
    const stopped = new Promise<void>((resolve) => stop.signal.addEventListener('abort', () => {
      this.#kept.stop()
      resolve()
    }))
    const title = say('Reading the setups of this workspace')
    const done = showProgress({ title, stop, afterMs: patienceMs }, (percent) => Promise.race([stopped, this.#find(stop.signal, percent)]))
    const round: Round = { stop, done: done.finally(() => round === this.#round && this.#read.fire()) }
    // Whoever asks next tries again.
    round.done.catch(() => this.#round === round && (this.#round = undefined))
    return round
  }

  async #find(signal: AbortSignal, percent: (percent: number) => void): Promise<void> {
    const source = new vscode.CancellationTokenSource()
    signal.addEventListener('abort', () => source.cancel())
    const found = await vscode.workspace.findFiles(notebookPattern, excluded, undefined, source.token)
    if (!signal.aborted) await this.#kept.keep(found.map(String), (done, of) => percent((100 * done) / of))
  }

  async #stampOf(key: string): Promise<string> {
    const open = openAt(key)
    if (open) return `${this.#rules} open ${open.version}${this.notebooks.isWorkedOut(open) ? '' : ' for now'}`
    const { mtime, size } = await vscode.workspace.fs.stat(vscode.Uri.parse(key))
    return `${this.#rules} ${mtime} ${size}`
  }

  async #readOne(key: string, earlier: KnownNotebook | undefined): Promise<KnownNotebook> {
    const [uri, open] = [vscode.Uri.parse(key), openAt(key)]
    if (open) {
      const analysis = this.notebooks.of(open)
      return { uri, notebook: analysis.notebook, ...(this.notebooks.isWorkedOut(open) ? { findings: analysis.findings } : { findings: [], unfinished: true }) }
    }
    const reading = this.notebooks.read(new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)), earlier?.notebook)
    const work = this.notebooks.checkInSteps(reading.notebook)
    while (!work.next().done) {
      await this.#giveWay()
      // Opened meanwhile, it is worked out for whoever opened it, and asked for again when it is.
      if (openAt(key)) return { uri, notebook: reading.notebook, findings: [], unfinished: true }
    }
    return { uri, notebook: reading.notebook, findings: reading.findings }
  }

  /** Whoever types is not to wait for what nobody looks at: it rests until the keys do. */
  async #giveWay(): Promise<void> {
    await this.#pause()
    while (Date.now() - this.#typedAt < restMs) await new Promise((resolve) => setTimeout(resolve, restMs))
  }

  #typed(uri: vscode.Uri): void {
    this.#typedAt = Date.now()
    this.#touch(uri)
  }

  #touch(uri: vscode.Uri): void {
    this.#touched.add(uri.toString())
    this.#soon()
  }

  #come(uri?: vscode.Uri): void {
    this.#came = true
    // One that was there before has been written anew.
    if (uri) this.#touched.add(uri.toString())
    this.#soon()
  }

  /** Leaves out what stood at a path or below it. */
  #forget(uri: vscode.Uri): void {
    const at = uri.toString()
    if (this.#kept.forget((key) => key === at || key.startsWith(`${at}/`))) this.#changed.fire(undefined)
  }

  #heed(event: vscode.ConfigurationChangeEvent): void {
    if (event.affectsConfiguration('detent.rules')) this.#rules++
    if (['detent.rules', 'files.exclude'].some((section) => event.affectsConfiguration(section))) this.refresh()
  }

  #soon(): void {
    clearTimeout(this.#resting)
    this.#resting = setTimeout(() => void this.#follow(), restMs)
  }

  /** Reads what changed, and looks for what came where all were found before. */
  async #follow(): Promise<void> {
    const touched = [...this.#touched].filter((key) => this.#kept.has(key))
    const came = this.#came
    this.#touched.clear()
    this.#came = false
    if (!this.#round) return
    const reading = this.#kept.touch(touched)
    // What a person cancelled is not begun again because a file came.
    if (came && this.left === 0) return this.refresh()
    if (touched.length === 0) return
    await reading
    this.#changed.fire(touched.length === 1 ? vscode.Uri.parse(touched[0]!) : undefined)
  }
}

const openAt = (key: string) => vscode.workspace.textDocuments.find(({ uri }) => uri.toString() === key)
