import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import type { GridSession } from './gridSession'

/** The grids that are open. Commands find theirs here: while a grid is active there is no active text editor. */
export class Sessions implements vscode.Disposable {
  readonly #open = new Set<GridSession>()
  #latest: GridSession | undefined
  readonly #moved = new vscode.EventEmitter<void>()
  /** Fires when another grid, or none, has the focus, and when selection or findings of one changed. */
  readonly onDidMove = this.#moved.event
  readonly #saving = vscode.workspace.onWillSaveTextDocument((event) => {
    const mine = this.on(event.document.uri)
    if (mine.length > 0) event.waitUntil(Promise.all(mine.map((session) => session.settle())).then(() => []))
  })

  add(session: GridSession): void {
    this.#open.add(session)
    session.onDidMove(() => {
      if (session.active) this.#latest = session
      this.#moved.fire()
    })
  }

  remove(session: GridSession): void {
    this.#open.delete(session)
    if (this.#latest === session) this.#latest = undefined
    this.#moved.fire()
  }

  /** The grid that has the focus. */
  get active(): GridSession | undefined {
    return [...this.#open].find((session) => session.active)
  }

  /** The grid in focus, or else the one that was last, brought to the front. Where none is open, says how to get one. */
  async toFront(): Promise<GridSession | undefined> {
    const session = this.active ?? this.#latest ?? [...this.#open].at(-1)
    if (session) {
      if (!session.active) session.panel.reveal()
      return session
    }
    const [sample, begin] = [say('Open a Sample'), say('New Setup Notebook…')]
    const chosen = await vscode.window.showInformationMessage(say('No setup notebook is open as a grid.'), begin, sample)
    if (chosen) await vscode.commands.executeCommand(chosen === sample ? 'detent.openSample' : 'detent.newNotebook')
    return undefined
  }

  /** The entry that is selected in the grid in focus, where that is on this file. */
  async selectedIn(uri: vscode.Uri): Promise<string | undefined> {
    const session = this.on(uri).find(({ active }) => active)
    await session?.settle()
    return session?.selected.at(-1)
  }

  /** All grids on a file. */
  on(uri: vscode.Uri): GridSession[] {
    return [...this.#open].filter((session) => session.document.uri.toString() === uri.toString())
  }

  dispose(): void {
    this.#saving.dispose()
    this.#moved.dispose()
  }
}
