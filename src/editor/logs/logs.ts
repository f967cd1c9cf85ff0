import * as vscode from 'vscode'
import { logPathsOf, logRequestOf } from '../../core/derived/logOf'
import type { LogRequest } from '../../core/logs/analyseLog'
import type { CloserLook, LogAtHand, LogsAtHand } from '../../core/logs/atHand'
import { told } from '../../core/logs/problem'
import type { Notebook } from '../../core/notebook/notebook'
import { say } from '../../core/words/say'
import { showProgress } from '../showProgress'
import { CloserLooks, type Stretch } from './closerLooks'
import { findLog, folderOf } from './findLog'
import { Stopped, type LogFile, type LogReader } from './logReader'
import { LogWatch } from './logWatch'
import { readHere } from './readHere'
import { readOnThread } from './readOnThread'

/** A path that is being typed is no path yet, and a mapping neither, ms. */
const restMs = 300
/** Logs that come in quick succession are shown together, ms. */
const gatherMs = 150
/** So many results are kept for who comes back to them. */
const mostKept = 100
/** Into so many pieces the drawing of a whole log is cut. */
const tracePieces = 4096

/** A notebook, and what is known of its logs. */
interface Book {
  key: string
  uri: vscode.Uri
  paths: string
  /** Absent where the notebook does not say which column is what. */
  request: LogRequest | undefined
  requestKey: string
  logs: LogsAtHand
  due: Set<string>
  timer?: ReturnType<typeof setTimeout>
}

/**
 * The logs of the notebooks that are open: read once for their content and mapping, one at a time, away from what is
 * typed. Whoever asks is told at once what is known, and told again when it is more.
 */
export class Logs implements vscode.Disposable {
  readonly #books = new Map<string, Book>()
  readonly #fingerprints = new Map<string, string>()
  readonly #results = new Map<string, LogAtHand>()
  readonly #changed = new vscode.EventEmitter<vscode.Uri>()
  readonly #watch = new LogWatch((log) => this.#heed(log))
  readonly #thread: Promise<LogReader | undefined>
  readonly #here: LogReader
  readonly #subscriptions: vscode.Disposable[]
  readonly #told = new Set<Book>()
  readonly #closer = new CloserLooks()
  readonly #lookedCloser = new vscode.EventEmitter<vscode.Uri>()
  #stamps = 0
  #working = false
  #job: { book: Book; path: string; requestKey: string; stop: AbortController } | undefined

  /** Fires when more is known of the logs of a notebook. */
  readonly onDidChange = this.#changed.event
  /** Fires when a closer look at a log of a notebook is there, which changes nothing that is found of it. */
  readonly onDidLookCloser = this.#lookedCloser.event

  constructor(extension: vscode.Uri) {
    this.#thread = readOnThread(vscode.Uri.joinPath(extension, 'dist', 'threads.js').fsPath, vscode.l10n.bundle)
    this.#here = readHere(extension)
    this.#subscriptions = [
      this.#changed, this.#lookedCloser, this.#watch,
      vscode.workspace.onDidCloseTextDocument(({ uri }) => [...this.#books.values()].filter((book) => book.uri.toString() === uri.toString()).forEach(({ key }) => this.#close(key))),
      vscode.commands.registerCommand('detent.readLogs', () => this.#readAgain()),
      // What came while another program was in front, such as the logger's own, may not have been noticed.
      vscode.window.onDidChangeWindowState(({ focused }) => focused && this.#readAgain()),
    ]
  }

  /**
   * What is known of the logs of a notebook, the same object as long as that stays so; what is not known is read soon.
   * `version` tells versions of one file apart, which may name other logs.
   */
  of(uri: vscode.Uri, notebook: Notebook, version = ''): LogsAtHand | undefined {
    const key = `${uri.toString()} ${version}`
    const known = this.#books.get(key)
    if (notebook.broken) return known?.logs
    const paths = uri.scheme === 'git' || uri.scheme === 'untitled' ? [] : logPathsOf(notebook)
    if (paths.length === 0) return void this.#close(key)
    const book = known ?? { key, uri, paths: '', request: undefined, requestKey: '', logs: new Map<string, LogAtHand>(), due: new Set<string>() }
    this.#books.set(key, book)
    const request = logRequestOf(notebook)
    const [named, requestKey] = [paths.join('\n'), JSON.stringify(request ?? null)]
    if (book.paths !== named || book.requestKey !== requestKey) this.#ask(Object.assign(book, { paths: named, request }), paths, requestKey)
    return book.logs
  }

  /** A stretch of a log that was read, in more detail; `onDidLookCloser` tells when it is known. */
  closer(uri: vscode.Uri, path: string, [fromS, toS]: Stretch): CloserLook | 'reading' | undefined {
    const book = [...this.#books.values()].find((each) => each.uri.toString() === uri.toString() && each.logs.has(path))
    const log = book?.logs.get(path)
    if (!book?.request || log?.state !== 'read') return undefined
    const request = { ...book.request, window: { fromS, toS }, options: { tracePieces } }
    return this.#closer.of(`${book.key} ${path} ${log.stamp} ${fromS} ${toS}`, async () => {
      const file = await findLog(folderOf(uri), path)
      if ('why' in file) return undefined
      return (await (await this.#readerOf(file)).analyse(file, request, { signal: new AbortController().signal, progress: () => undefined })).statistics
    }, () => this.#lookedCloser.fire(uri))
  }

  /** The first bytes of a log, for a look at its columns. */
  async headOf(file: LogFile): Promise<Uint8Array> {
    return (await this.#readerOf(file)).head(file)
  }

  dispose(): void {
    this.#job?.stop.abort()
    for (const { timer } of this.#books.values()) clearTimeout(timer)
    this.#books.clear()
    for (const each of this.#subscriptions) each.dispose()
    void this.#thread.then((thread) => thread?.dispose())
  }

  #ask(book: Book, paths: readonly string[], requestKey: string): void {
    const same = book.requestKey === requestKey
    const before = same ? book.logs : undefined
    book.requestKey = requestKey
    book.due = new Set(paths.filter((path) => !before?.has(path) || book.due.has(path)))
    book.logs = new Map(paths.map((path) => [path, before?.get(path) ?? { state: 'reading', stamp: 'reading' }]))
    if (this.#job?.book === book && !(same && book.logs.has(this.#job.path))) this.#job.stop.abort()
    this.#watch.set(book.key, paths.map((path) => vscode.Uri.joinPath(folderOf(book.uri), path)))
    this.#soon(book)
  }

  #soon(book: Book, ms = restMs): void {
    clearTimeout(book.timer)
    if (book.due.size > 0) book.timer = setTimeout(() => { book.timer = undefined; void this.#work() }, ms)
  }

  /** A log, or a folder of logs, is another one on the disk. */
  #heed(log: vscode.Uri): void {
    for (const book of this.#books.values()) {
      const touched = [...book.logs.keys()].filter((path) => vscode.Uri.joinPath(folderOf(book.uri), path).toString() === log.toString())
      touched.forEach((path) => book.due.add(path))
      if (touched.length > 0) this.#soon(book)
    }
  }

  #readAgain(): void {
    for (const book of this.#books.values()) {
      book.due = new Set(book.logs.keys())
      this.#soon(book, 0)
    }
  }

  #close(key: string): void {
    const book = this.#books.get(key)
    if (!book) return
    clearTimeout(book.timer)
    book.due.clear()
    this.#books.delete(key)
    this.#watch.set(key, [])
    if (this.#job?.book === book) this.#job.stop.abort()
  }

  async #work(): Promise<void> {
    if (this.#working) return
    this.#working = true
    for (let book = this.#next(); book; book = this.#next()) {
      const path: string = book.due.values().next().value!
      book.due.delete(path)
      await this.#look(book, path)
    }
    this.#working = false
  }

  /** A notebook with something to read that is not being typed in just now. */
  #next(): Book | undefined {
    return [...this.#books.values()].find((book) => book.timer === undefined && book.due.size > 0)
  }

  async #look(book: Book, path: string): Promise<void> {
    const { requestKey } = book
    const stop = new AbortController()
    this.#job = { book, path, requestKey, stop }
    const found = await this.#read(book, path, stop).catch((error: unknown) => (error instanceof Stopped ? undefined : this.#unread((error as Error).message)))
    this.#job = undefined
    if (!found || book.requestKey !== requestKey || !book.logs.has(path)) return
    const before = book.logs.get(path)!
    const isSame = before === found || (before.state === 'unread' && found.state === 'unread' && before.why === found.why)
    if (isSame) return
    book.logs = new Map([...book.logs, [path, found]])
    this.#tell(book)
  }

  async #read({ uri, request, requestKey }: Book, path: string, stop: AbortController): Promise<LogAtHand> {
    const file = await findLog(folderOf(uri), path)
    if ('why' in file) return this.#unread(file.why, file.absent)
    if (!request) return this.#unread(say('the notebook does not say which column is what; “Detent: Describe Logger…” proposes it'), true)
    const reader = await this.#readerOf(file)
    return showProgress({ title: say`Reading the log ${path}`, stop }, async (percent, wasStopped) => {
      // Packed files hold more than their size: they stay short of the end until it is there.
      const progress = (bytes: number) => percent(Math.min(99, (100 * bytes) / Math.max(1, file.size)))
      try {
        return await this.#result(reader, file, { request, requestKey, stop, progress })
      } catch (error) {
        if (!wasStopped()) throw error
        return this.#unread(say('reading it was stopped; “Detent: Read Logs Again” begins anew'))
      }
    })
  }

  async #result(reader: LogReader, file: LogFile, how: { request: LogRequest; requestKey: string; stop: AbortController; progress: (bytes: number) => void }): Promise<LogAtHand> {
    const { request, requestKey, stop: { signal }, progress } = how
    const looks = `${file.uri} ${file.size} ${file.changed}`
    const fingerprint = this.#fingerprints.get(looks) ?? await reader.fingerprint(file, signal)
    this.#fingerprints.set(looks, fingerprint)
    const key = `${fingerprint} ${requestKey}`
    const known = this.#results.get(key)
    if (known) return known
    const report = await reader.analyse(file, { ...request, options: { tracePieces } }, { signal, progress })
    const { statistics } = report
    const result: LogAtHand = statistics ? { ...report, statistics, state: 'read', stamp: String(++this.#stamps) } : this.#unread(told(report.problem!))
    this.#results.set(key, result)
    for (const old of this.#results.keys()) if (this.#results.size > mostKept) this.#results.delete(old)
    return result
  }

  async #readerOf({ path }: LogFile): Promise<LogReader> {
    return (path === undefined ? undefined : await this.#thread) ?? this.#here
  }

  #unread(why: string, absent?: true): LogAtHand {
    return { state: 'unread', stamp: String(++this.#stamps), why, ...(absent ? { absent } : {}) }
  }

  #tell(book: Book): void {
    if (this.#told.size === 0) setTimeout(() => {
      const books = [...this.#told]
      this.#told.clear()
      for (const { uri } of books) this.#changed.fire(uri)
    }, gatherMs)
    this.#told.add(book)
  }
}
