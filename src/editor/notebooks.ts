import * as vscode from 'vscode'
import type { Finding, Severity } from '../core/finding'
import { logTraced } from '../core/charts/logTrace'
import { withCloserLook, withLogs } from '../core/derived/logOf'
import { isNotebookPath } from '../core/notebook/fileName'
import type { Notebook } from '../core/notebook/notebook'
import { readNotebook } from '../core/notebook/readNotebook'
import { checkEntries, checkNotebook } from '../core/rules/checkNotebook'
import { displaySection } from './displayUnits'
import type { Stretch } from './logs/closerLooks'
import type { Logs } from './logs/logs'
import { LongNotebooks } from './longNotebooks'

/** One reading of a document with its findings. Every feature asks for it here, so that a text is read once, and checked when findings are first asked for. */
export interface Analysis {
  version: number
  notebook: Notebook
  readonly findings: Finding[]
}

export { notebookPattern, viewType } from './names'

/** Whether a document is a setup notebook, by its name. */
export function isNotebook({ uri }: Pick<vscode.TextDocument, 'uri'>): boolean {
  return isNotebookPath(uri.path)
}

/** The notebooks that are open, each read once for each version of its text. */
export class Notebooks implements vscode.Disposable {
  readonly #analyses = new WeakMap<vscode.TextDocument, Analysis>()
  readonly #good = new WeakMap<vscode.TextDocument, Analysis>()
  readonly #ahead = new WeakMap<vscode.TextDocument, Analysis>()
  readonly #long: LongNotebooks
  readonly #changed = new vscode.EventEmitter<vscode.TextDocument>()
  readonly #subscriptions: vscode.Disposable[]
  #severities = severitiesFromSettings()

  /** Fires when a notebook was opened, or its text, its logs, the loudness of the rules or the units to show it in changed. */
  readonly onDidChange = this.#changed.event

  constructor(readonly logs: Logs) {
    this.#long = new LongNotebooks((document) => this.of(document).notebook, (notebook) => this.checkInSteps(notebook), (document) => this.#changed.fire(document))
    this.#subscriptions = [
      this.#changed,
      logs.onDidChange((uri) => this.#hearOfLogs(uri)),
      vscode.workspace.onDidOpenTextDocument((document) => this.#tell(document)),
      vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => contentChanges.length > 0 && this.#tell(document)),
      vscode.workspace.onDidChangeConfiguration((event) => this.#heed(event)),
    ]
  }

  /** The analysis of a document as it stands now. */
  of(document: vscode.TextDocument): Analysis {
    const known = this.#analyses.get(document)
    if (known?.version === document.version) return known
    const text = document.getText()
    const ahead = this.#ahead.get(document)
    this.#ahead.delete(document)
    const analysis = ahead?.notebook.text === text ? Object.assign(ahead, { version: document.version }) : this.#analyse(document, text, known)
    this.#analyses.set(document, analysis)
    if (!analysis.notebook.broken) this.#good.set(document, analysis)
    return analysis
  }

  /** The analysis of a document as it will be with a text that is being written to it; once it is, that is what `of` gives. */
  ahead(document: vscode.TextDocument, text: string): Analysis {
    const analysis = this.#analyse(document, text, this.of(document))
    this.#ahead.set(document, analysis)
    return analysis
  }

  /** Whether findings and computed numbers of a document are there, or so soon that they can be waited for. */
  isWorkedOut(document: vscode.TextDocument): boolean {
    return this.#long.isWorkedOut(document)
  }

  /** Works out a long notebook while others are let go first; `onDidChange` tells when it is done. */
  prepare(document: vscode.TextDocument): void {
    this.#long.prepare(document)
  }

  /** The reading of a text that is in no document: of a revision, or of the file as it was saved. What it has in common with an `earlier` one is not read again. */
  read(text: string, earlier?: Notebook): Omit<Analysis, 'version'> {
    return this.#checkedLater(0, readNotebook(text, earlier?.parsed.pieces ? earlier : undefined))
  }

  /** Checks a notebook entry by entry, so that its findings are then there at once. */
  checkInSteps(notebook: Notebook): Generator<void, void> {
    return checkEntries(notebook, this.#severities)
  }

  /** A reading with what is known of its logs; `version` is the one of the file's that it is of. */
  beside(reading: Omit<Analysis, 'version'>, uri: vscode.Uri, version: string): Omit<Analysis, 'version'> {
    const logs = this.logs.of(uri, reading.notebook, version)
    if (!logs) return reading
    const notebook = withLogs(reading.notebook, logs)
    return { notebook, findings: checkNotebook(notebook, this.#severities) }
  }

  /** A notebook with a closer look at the log drawn for an entry, where a stretch of it is wanted; `logs.onDidLookCloser` tells when it is there. */
  closely(notebook: Notebook, uri: vscode.Uri, entry: string | undefined, within: Stretch | undefined): Notebook {
    const path = within && logTraced(notebook, entry)
    const closer = path && this.logs.closer(uri, path, within)
    return closer ? withCloserLook(notebook, path, closer) : notebook
  }

  /** The last analysis of a text without an error; absent when there was none since it was opened. */
  lastGood(document: vscode.TextDocument): Analysis | undefined {
    return this.#good.get(document)
  }

  dispose(): void {
    for (const each of this.#subscriptions) each.dispose()
  }

  #analyse(document: vscode.TextDocument, text: string, known: Analysis | undefined): Analysis {
    const earlier = known?.notebook.parsed.pieces ? known : this.#good.get(document)
    const read = readNotebook(text, earlier?.notebook)
    const notebook = withLogs(read, this.logs.of(document.uri, read))
    return this.#checkedLater(document.version, notebook)
  }

  #checkedLater(version: number, notebook: Notebook): Analysis {
    const severities = this.#severities
    let findings: Finding[] | undefined
    return { version, notebook, get findings() { return (findings ??= checkNotebook(notebook, severities)) } }
  }

  #tell(document: vscode.TextDocument): void {
    if (isNotebook(document)) this.#changed.fire(document)
  }

  /** The text says the same; only what is known beside it is more. */
  #hearOfLogs(uri: vscode.Uri): void {
    const document = vscode.workspace.textDocuments.find((each) => each.uri.toString() === uri.toString())
    if (!document) return
    this.#ahead.delete(document)
    for (const known of [this.#analyses, this.#good]) {
      const before = known.get(document)
      if (!before) continue
      known.set(document, this.#checkedLater(before.version, withLogs(before.notebook, this.logs.of(uri, before.notebook))))
    }
    this.#changed.fire(document)
  }

  #heed(event: vscode.ConfigurationChangeEvent): void {
    if (event.affectsConfiguration('detent.rules')) this.#reload()
    else if (event.affectsConfiguration(displaySection)) vscode.workspace.textDocuments.forEach((document) => this.#tell(document))
  }

  #reload(): void {
    this.#severities = severitiesFromSettings()
    for (const document of vscode.workspace.textDocuments.filter(isNotebook)) {
      this.#analyses.delete(document)
      this.#ahead.delete(document)
      this.#changed.fire(document)
    }
  }
}

function severitiesFromSettings(): Map<string, Severity | 'off'> {
  const settings = vscode.workspace.getConfiguration('detent').get<Record<string, string>>('rules') ?? {}
  const words = ['error', 'warning', 'info', 'off'] as const
  return new Map(Object.entries(settings).flatMap(([code, word]) => {
    const known = words.find((each) => each === word)
    return known ? [[code, known] as const] : []
  }))
}
