import * as vscode from 'vscode'
import { headSvg } from '../../core/card/headSvg'
import type { StateRef } from '../../core/compare/comparison'
import { turnList } from '../../core/compare/turnList'
import { turnListHtml } from '../../core/compare/turnListHtml'
import { turnListText } from '../../core/compare/turnListText'
import type { TurnList } from '../../core/compare/turns'
import { say } from '../../core/words/say'
import type { FromTurns, ToTurns, TurnsView } from '../../protocol'
import type { States } from '../compare/states'
import { pageHtml, webviewOptions } from '../grid/page'
import { fromPage } from '../messages/fromPages'
import { saveHtml } from '../saveHtml'


export type TurnSources = TurnsView['sources']

/** A turn list that is open. It is made anew whenever one of its states may have changed; its ticks are the page's. */
export class TurnsPanel implements vscode.Disposable {
  #ready = false

  constructor(readonly panel: vscode.WebviewPanel, readonly sources: TurnSources, readonly states: States, extension: vscode.Uri) {
    panel.webview.options = webviewOptions(extension)
    panel.webview.onDidReceiveMessage(fromPage('turns', (message) => void this.#receive(message)))
    panel.webview.html = pageHtml(panel.webview, extension, 'turns', say('Turn list'))
  }

  /** Whether its page was ever there. */
  get hasSpoken(): boolean {
    return this.#ready
  }

  /** Whether it hangs on a notebook as it is in the editor. */
  reads(uri: vscode.Uri): boolean {
    return Object.values(this.sources).some((source) => source.uri === uri.toString())
  }

  async update(): Promise<void> {
    if (this.#ready) await this.#show()
  }

  async copy(): Promise<void> {
    await vscode.env.clipboard.writeText(turnListText(await this.#list()))
    vscode.window.setStatusBarMessage(say('Turn list copied.'), 4000)
  }

  async save(): Promise<void> {
    const list = await this.#list()
    await saveHtml(turnListHtml(list), vscode.Uri.parse(this.sources.to.uri), `turns-to-${list.to.entry?.key ?? 'entry'}`)
  }

  dispose(): void {
    this.panel.dispose()
  }

  async #receive(message: FromTurns): Promise<void> {
    switch (message.type) {
      case 'ready': {
        this.#ready = true
        return this.#show()
      }
      case 'copyAsked': return this.copy()
      case 'saveAsked': return this.save()
    }
  }

  async #show(): Promise<void> {
    const list = await this.#list()
    const turns = list.groups.flatMap(({ steps }) => steps.flatMap((step) => step.turns))
    const drawings = Object.fromEntries(turns.flatMap(({ row, drawing }) => (drawing ? [[row, headSvg(drawing)]] : [])))
    this.panel.title = list.to.entry ? say`Turns to ${list.to.entry.key}` : say('Turn list')
    const message: ToTurns = { type: 'turnsShown', view: { list, drawings, sources: this.sources } }
    await this.panel.webview.postMessage(message)
  }

  async #list(): Promise<TurnList> {
    const { from, to } = this.sources
    const refs = (await Promise.all([this.states.read(from), this.states.read(to)])) as [StateRef, StateRef]
    // Two versions of one file are of one machine, whatever it is called in them.
    return turnList(refs[0], refs[1], from.uri === to.uri ? { oneMachine: true } : {})
  }
}
