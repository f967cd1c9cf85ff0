import * as vscode from 'vscode'
import { compareStates } from '../../core/compare/compareStates'
import type { Comparison, StateRef } from '../../core/compare/comparison'
import { stepPair, type Pair } from '../../core/compare/stepPair'
import { say } from '../../core/words/say'
import type { CompareView, FromCompare, SideName, StateSource, ToCompare } from '../../protocol'
import { displayUnitsFor } from '../displayUnits'
import { pageHtml, webviewOptions } from '../grid/page'
import { fromPage } from '../messages/fromPages'
import { pickState } from './pickState'
import { inSteps } from '../steps'
import { wordsOfSource } from './sources'
import type { States } from './states'

export type Sources = Record<SideName, StateSource>

/** What a panel needs of the world around it. */
export interface PanelPorts {
  readonly extension: vscode.Uri
  readonly states: States
  /** Whether rows that are alike are hidden, for all panels and from one day to the next. */
  filter: { get(): boolean; set(onlyDifferences: boolean): void }
  open: {
    place(source: StateSource, place: Extract<FromCompare, { type: 'placeOpened' }>['place']): Promise<void>
    line(source: StateSource, line: number): Promise<void>
    turnList(sources: Sources): Promise<void>
  }
  /** Whether a turn list can be asked for. */
  hasTurnList: boolean
}

/** One comparison in a tab of its own. It keeps which two states it shows, and makes everything else anew from them. */
export class ComparePanel {
  #ready = false
  #reading = false
  #again = false
  /** What the page shows, to send nothing that it shows already. */
  #shown = ''
  #states: Record<SideName, StateRef> | undefined
  readonly #moved = new vscode.EventEmitter<void>()
  /** Fires when it shows two other states. */
  readonly onDidChangeSources = this.#moved.event

  constructor(readonly panel: vscode.WebviewPanel, public sources: Sources, readonly ports: PanelPorts) {
    panel.webview.options = webviewOptions(ports.extension)
    panel.webview.onDidReceiveMessage(fromPage('compare', (message) => void this.#receive(message)))
    panel.webview.html = pageHtml(panel.webview, ports.extension, 'compare', say('Compare setups'))
  }

  /** Whether its page was ever there. */
  get hasSpoken(): boolean {
    return this.#ready
  }

  /** Whether one of its sides is taken from this file. */
  reads(uri: vscode.Uri): boolean {
    return Object.values(this.sources).some((source) => source.uri === uri.toString())
  }

  /** Whether one of its sides is taken from git. */
  get readsGit(): boolean {
    return Object.values(this.sources).some(({ revision }) => revision !== undefined)
  }

  swap(): Promise<void> {
    return this.show({ left: this.sources.right, right: this.sources.left })
  }

  async step(newer: boolean): Promise<void> {
    const pair = this.#pair(newer)
    if (pair) await this.show({ left: { ...this.sources.left, entry: pair.left }, right: { ...this.sources.right, entry: pair.right } })
  }

  /** Asks for another state of a side, and shows it. */
  async choose(side: SideName): Promise<void> {
    const beside = this.sources[side === 'left' ? 'right' : 'left']
    const title = side === 'left' ? say('Compare: what is on the left?') : say('Compare: what is on the right?')
    const chosen = await inSteps((steps) => pickState({ title, from: this.sources[side], beside }, this.ports.states, steps))
    if (chosen) await this.show({ ...this.sources, [side]: chosen })
    this.panel.reveal()
  }

  async show(sources: Sources): Promise<void> {
    this.sources = sources
    this.#moved.fire()
    await this.update()
  }

  /** Reads both sides again. What comes while they are being read is done after. */
  async update(): Promise<void> {
    this.#again = true
    if (this.#reading) return
    this.#reading = true
    try {
      while (this.#again) {
        this.#again = false
        await this.#read()
      }
    } finally {
      this.#reading = false
    }
    this.#send()
  }

  async #read(): Promise<void> {
    const { sources } = this
    const [left, right] = await Promise.all([this.ports.states.read(sources.left), this.ports.states.read(sources.right)])
    if (sources === this.sources) this.#states = { left, right }
  }

  #send(): void {
    if (!this.#states) return
    const { left, right } = this.#states
    const oneFile = this.sources.left.uri === this.sources.right.uri
    const comparison = compareStates(left, right, { ...(oneFile ? { oneMachine: true } : {}), units: displayUnitsFor(vscode.Uri.parse(this.sources.right.uri)) })
    this.panel.title = titleOf(comparison, this.sources)
    const message: ToCompare = { type: 'comparisonShown', view: this.#view(comparison) }
    const text = JSON.stringify(message)
    if (!this.#ready || text === this.#shown) return
    this.#shown = text
    void this.panel.webview.postMessage(message)
  }

  #view(comparison: Comparison): CompareView {
    const [older, newer] = [this.#pair(false), this.#pair(true)]
    const readable = comparison.left.entry !== undefined && comparison.right.entry !== undefined
    return {
      comparison, sources: this.sources, onlyDifferences: this.ports.filter.get(),
      ...(older ? { older: say`${older.left} to ${older.right}` } : {}), ...(newer ? { newer: say`${newer.left} to ${newer.right}` } : {}),
      turnList: this.ports.hasTurnList && readable && comparison.oneMachine,
    }
  }

  #pair(newer: boolean): Pair | undefined {
    if (!this.#states) return undefined
    const { left, right } = this.#states
    return left.missing === undefined && right.missing === undefined && !left.notebook.broken && !right.notebook.broken ? stepPair(left, right, newer) : undefined
  }

  async #receive(message: FromCompare): Promise<void> {
    const { open } = this.ports
    switch (message.type) {
      case 'ready':
        this.#ready = true
        this.#shown = ''
        return this.update()
      case 'sidesSwapped': return this.swap()
      case 'stepped': return this.step(message.newer)
      case 'sideAsked': return this.choose(message.side)
      case 'filterSet':
        this.ports.filter.set(message.onlyDifferences)
        return this.#send()
      case 'placeOpened': return open.place(this.sources[message.side], message.place)
      case 'lineOpened': return open.line(this.sources[message.side], message.line)
      case 'turnListAsked': return open.turnList(withEntries(this.sources, this.#states))
    }
  }
}

/** The states by their entries, also where the last one was meant: a list of turns must not follow what is added later. */
function withEntries(sources: Sources, states: Record<SideName, StateRef> | undefined): Sources {
  const named = (side: SideName): StateSource => {
    const entry = sources[side].entry ?? states?.[side].notebook.entries.at(-1)?.key
    return { ...sources[side], ...(entry === undefined ? {} : { entry }) }
  }
  return { left: named('left'), right: named('right') }
}

/** @example 'as-found ↔ run-1' */
function titleOf({ left, right }: Comparison, sources: Sources): string {
  const name = (side: SideName) => {
    const { entry } = { left, right }[side]
    const version = wordsOfSource(sources[side])
    return [entry?.key ?? vscode.Uri.parse(sources[side].uri).path.split('/').at(-1), version].filter(Boolean).join(' ')
  }
  return `${name('left')} ↔ ${name('right')}`
}
