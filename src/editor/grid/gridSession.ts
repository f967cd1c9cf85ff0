import * as vscode from 'vscode'
import { adviceCard } from '../../core/advice/adviceCard'
import { applyGesture, type Answer } from '../../core/grid/applyGesture'
import { cardFor } from '../../core/card/cardFor'
import { buildCharts } from '../../core/charts/buildCharts'
import { headSvg } from '../../core/card/headSvg'
import { diffGrid } from '../../core/grid/diffGrid'
import type { Gesture } from '../../core/grid/gesture'
import { packView, type PackedView } from '../../core/grid/packView'
import type { Severity } from '../../core/finding'
import type { GridPlace, GridView } from '../../core/grid/view'
import { withPoints, writesComma } from '../../core/grid/withPoints'
import { bareName } from '../../core/notebook/fileName'
import { labelFrom } from '../../core/notebook/readAdjusters'
import { say } from '../../core/words/say'
import { applyChanges, type TextChange } from '../../core/text'
import type { FromWebview, GridCommand, ToWebview } from '../../protocol'
import { displayUnitsFor } from '../displayUnits'
import type { Analysis, Notebooks } from '../notebooks'
import { fromPage } from '../messages/fromPages'
import { ChartsFeed } from './chartsFeed'
import type { EditQueue } from './editQueue'
import { viewOf, whyReadOnly } from './viewOf'
import { openAsText } from '../commands/openAsText'
import { asText } from '../asText'

/** How long a save waits for a grid to hand over what is being typed. */
const pendingMs = 1000

/** One grid on one document. It holds no state of the notebook but what it showed last. */
export class GridSession implements vscode.Disposable {
  #shown: GridView | undefined
  /** What was made to be shown first, while its page was on its way. */
  #foreseen: { analysis: Analysis; view: GridView; packed: PackedView } | undefined
  /** What the grid shows while the editor is being asked to write it. */
  #ahead: Analysis | undefined
  #version = 0
  #asked = 0
  #ready = false
  #selected: string[] = []
  #range = false
  #cells = 0
  #place: GridPlace | null = null
  #due: GridCommand | undefined
  #reveal: { place: GridPlace; edit?: boolean } | undefined
  readonly #waiting = new Map<number, () => void>()
  readonly #charts = new ChartsFeed(
    ({ group, column, between, within }) => buildCharts(this.notebooks.closely(this.#readable().notebook, this.document.uri, column, within), group, column, displayUnitsFor(this.document.uri), between),
    (charts) => this.#post({ type: 'chartsGiven', charts }),
  )
  readonly #subscriptions: vscode.Disposable[]
  readonly #told = new vscode.EventEmitter<void>()
  /** Fires when the grid came to the front or left it, and when selection or findings changed. */
  readonly onDidMove = this.#told.event

  constructor(readonly document: vscode.TextDocument, readonly panel: vscode.WebviewPanel, readonly notebooks: Notebooks, readonly queue: EditQueue) {
    this.#subscriptions = [
      this.#told,
      panel.webview.onDidReceiveMessage(fromPage('grid', (message) => this.#receive(message))),
      panel.onDidChangeViewState(() => this.tellContext()),
      notebooks.onDidChange((changed) => changed === document && this.#update()),
      notebooks.logs.onDidLookCloser((uri) => uri.toString() === document.uri.toString() && this.#charts.update()),
      // A page that is hidden is gone, and says that it is ready when it is there again.
      panel.onDidChangeViewState(() => { if (!panel.visible) this.#ready = false }),
    ]
  }

  /** Whether its page is there. */
  get ready(): boolean {
    return this.#ready
  }

  get active(): boolean {
    return this.panel.active
  }

  /** The entries that the selection begins and ends in, from left to right; one of them, or none. */
  get selected(): readonly string[] {
    return this.#selected
  }

  /** Tells key bindings what is selected in the grid in focus. */
  tellContext(): void {
    if (this.active) void vscode.commands.executeCommand('setContext', 'detent.rangeSelected', this.#range)
    this.#told.fire()
  }

  /** Where one stands, in words: row and entry, or how many cells are selected; with what was found in the notebook, worst first. */
  whereabouts(): { place: string; findings: Record<Severity, number>; unfinished: boolean } {
    const counts = { error: 0, warning: 0, info: 0 }
    for (const { severity } of this.#shown?.findings ?? []) counts[severity]++
    const row = this.#shown?.rows.find(({ key }) => key === this.#place?.row)
    const column = this.#shown?.columns.find(({ key }) => key === this.#place?.column)
    const label = row && [row.label, row.detail].filter(Boolean).join(' ')
    const name = label && column ? say`${label}, ${column.id || column.key}` : ''
    return { place: this.#range ? say`${this.#cells} cells from ${name}` : name, findings: counts, unfinished: this.#shown?.unfinished === true }
  }

  /** Passes a command on to the grid, which knows what is selected; as soon as the page is there when it is not yet. */
  give(command: GridCommand): void {
    if (this.#ready) this.#post({ type: 'commandGiven', command })
    else this.#due = command
  }

  /** Selects a cell; as soon as the page is there when it is not yet. */
  reveal(place: GridPlace, edit = false): void {
    if (this.#ready) this.#post({ type: 'placeRevealed', place, edit })
    else this.#reveal = { place, edit }
  }

  /** Has what is being typed handed over and written; used before a save. */
  async settle(): Promise<void> {
    if (!this.#ready || !this.panel.visible) return this.queue.idle(this.document)
    const id = ++this.#asked
    await new Promise<void>((resolve) => {
      this.#waiting.set(id, resolve)
      setTimeout(resolve, pendingMs)
      this.#post({ type: 'pendingAsked', id })
    })
    this.#waiting.delete(id)
    await this.queue.idle(this.document)
  }

  dispose(): void {
    this.#ready = false
    for (const each of this.#subscriptions) each.dispose()
  }

  /** Why a gesture would be refused; `undefined` where it can be done. */
  whyNot(gesture: Gesture): string | undefined {
    return whyReadOnly(this.document) ?? this.#compute(gesture).refused
  }

  /** Writes what a command outside the page asks for and goes where it leads, which it answers; says why where it is refused. */
  async perform(gesture: Gesture): Promise<GridPlace | undefined> {
    const answer = await this.#write(gesture)
    if (answer.refused !== undefined) return void (await vscode.window.showWarningMessage(asText(answer.refused)))
    if (answer.reveal) this.reveal(answer.reveal)
    return answer.reveal
  }

  #receive(message: FromWebview): void {
    switch (message.type) {
      case 'ready': return this.#show()
      case 'gesture': return void this.#perform(message.id, message.gesture)
      case 'pendingSent': return this.#waiting.get(message.id)?.()
      case 'cardAsked': return this.#giveCard(message)
      case 'adviceAsked': return this.#giveAdvice(message)
      case 'chartsAsked': return this.#charts.ask(message)
      case 'chartsLeft': return this.#charts.leave()
      case 'openText': return void this.settle().then(() => openAsText(this.document, this.notebooks, message))
      case 'selectionChanged':
        this.#selected = message.columns
        this.#range = message.range
        this.#cells = message.cells
        this.#place = message.place
        return this.tellContext()
    }
  }

  /** Makes what is shown first while the page is still on its way: that takes it longer than most notebooks take. */
  foresee(): void {
    if (this.#shown) return
    this.#foreseen = this.#firstView()
  }

  #firstView() {
    const analysis = this.notebooks.of(this.document)
    const view = viewOf(this.document, analysis, this.notebooks)
    return { analysis, view, packed: packView(view) }
  }

  #show(): void {
    this.#ready = true
    const { view, packed } = this.#foreseen?.analysis === this.notebooks.of(this.document) ? this.#foreseen : this.#firstView()
    this.#foreseen = undefined
    this.#shown = view
    this.#ahead = undefined
    this.#post({ type: 'gridShown', version: ++this.#version, view: packed })
    if (this.#reveal) this.#post({ type: 'placeRevealed', ...this.#reveal })
    this.#reveal = undefined
    if (this.#due) this.#post({ type: 'commandGiven', command: this.#due })
    this.#due = undefined
  }

  #update(): void {
    this.#foreseen = undefined
    // A hidden page is gone; it asks anew when it is shown again.
    if (!this.#ready || !this.#shown) return
    const now = this.notebooks.of(this.document)
    if (now !== this.#ahead) this.#updateGrid(this.#shown, viewOf(this.document, now, this.notebooks))
    this.#ahead = undefined
    this.#charts.update()
    this.#told.fire()
  }

  /** Shows what comes of changes that are being written: a person who types need not wait for the editor to have taken them. */
  #showAhead(changes: readonly TextChange[]): void {
    if (!this.#ready || !this.#shown) return
    this.#ahead = this.notebooks.ahead(this.document, applyChanges(this.document.getText(), changes))
    this.#updateGrid(this.#shown, viewOf(this.document, this.#ahead, this.notebooks))
  }

  #updateGrid(shown: GridView, view: GridView): void {
    const isFinished = shown.unfinished && !view.unfinished
    const difference = isFinished ? undefined : diffGrid(shown, view)
    this.#shown = view
    const version = ++this.#version
    if (!difference) return this.#post({ type: 'gridShown', version, view: packView(view) })
    const { columns, cells, findings } = difference
    const { title, state, readOnly, trouble } = view
    this.#post({
      type: 'gridChanged', version,
      patch: { title, state, columns, cells, ...(readOnly ? { readOnly } : {}), ...(trouble ? { trouble } : {}), ...(findings ? { findings } : {}) },
    })
  }

  async #perform(id: number, gesture: Gesture): Promise<void> {
    const answer = await this.#write(gesture)
    this.#post({
      type: 'gestureAnswered', id,
      ...(answer.refused === undefined ? {} : { refused: answer.refused }),
      ...('reveal' in answer && answer.reveal ? { reveal: answer.reveal } : {}),
      ...('left' in answer && answer.left ? { left: answer.left } : {}),
    })
  }

  async #write(gesture: Gesture): Promise<Answer> {
    const readOnly = whyReadOnly(this.document)
    if (readOnly) return { refused: readOnly }
    const answer = await this.queue.run(this.document, () => this.#compute(gesture), (changes) => this.#showAhead(changes))
    // What was shown has not come to be, or the editor has yet to say so.
    if (this.#ahead && answer.refused !== undefined) this.#update()
    return answer
  }

  #giveCard({ id, row, column }: Extract<FromWebview, { type: 'cardAsked' }>): void {
    const { notebook } = this.#readable()
    const card = cardFor(notebook, row, column, displayUnitsFor(this.document.uri))
    this.#post({ type: 'cardGiven', id, ...(card ? { card } : {}), ...(card?.drawing ? { drawing: headSvg(card.drawing) } : {}) })
  }

  #giveAdvice({ id, column }: Extract<FromWebview, { type: 'adviceAsked' }>): void {
    const { notebook } = this.#readable()
    const entry = notebook.entries.find(({ key }) => key === column)
    this.#post({ type: 'cardGiven', id, ...(entry ? { card: adviceCard(notebook, entry, displayUnitsFor(this.document.uri)) } : {}) })
  }

  /** The notebook as it is, or as it last was without an error. */
  #readable(): Analysis {
    const now = this.notebooks.of(this.document)
    return (now.notebook.broken && this.notebooks.lastGood(this.document)) || now
  }

  #compute(gesture: Gesture): Answer {
    const analysis = this.notebooks.of(this.document)
    const findings = this.#shown?.unfinished ? [] : analysis.findings
    const typed = writesComma(vscode.env.language) ? withPoints(gesture) : gesture
    return applyGesture(analysis.notebook, findings, typed.kind === 'begin' ? { ...typed, name: machineName(this.document.uri) } : typed)
  }

  #post(message: ToWebview): void {
    void this.panel.webview.postMessage(message)
  }
}

/** A first name for a machine, from its file's. @example 'tern-650.setup.yaml' gives 'Tern 650' */
function machineName({ path }: vscode.Uri): string {
  return labelFrom(bareName(path))
}
