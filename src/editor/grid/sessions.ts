import * as vscode from 'vscode'
import type { GridSession } from './gridSession'

/** The grids that are open. Commands find theirs here: while a grid is active there is no active text editor. */
export class Sessions implements vscode.Disposable {
  readonly #open = new Set<GridSession>()
  readonly #moved = new vscode.EventEmitter<void>()
  /** Fires when another grid, or none, has the focus, and when selection or findings of one changed. */
  readonly onDidMove = this.#moved.event
  readonly #saving = vscode.workspace.onWillSaveTextDocument((event) => {
    const mine = this.on(event.document.uri)
    if (mine.length > 0) event.waitUntil(Promise.all(mine.map((session) => session.settle())).then(() => []))
  })

  add(session: GridSession): void {
    this.#open.add(session)
    session.onDidMove(() => this.#moved.fire())
  }

  remove(session: GridSession): void {
    this.#open.delete(session)
    this.#moved.fire()
  }

  /** The grid that has the focus. */
  get active(): GridSession | undefined {
    return [...this.#open].find((session) => session.active)
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
