import * as vscode from 'vscode'
import { workOutGrid } from '../core/grid/entryCells'
import type { Notebook } from '../core/notebook/notebook'
import { displayUnitsFor } from './displayUnits'
import { stretches } from './stretches'

/** A notebook of more entries is worked out in short stretches when it is first seen. */
const longFrom = 200

/** So long, in ms, whatever shows a long notebook has for its first sight of it: two at once would take each longer. */
const firstSightMs = 1500

/** Long notebooks that are being worked out, and those that were: from then on, only what changes in them is. */
export class LongNotebooks {
  readonly #preparing = new WeakSet<vscode.TextDocument>()
  readonly #prepared = new WeakSet<vscode.TextDocument>()

  /** `of` gives the same notebook for as long as the text says the same; `done` hears of each that is worked out. */
  constructor(readonly of: (document: vscode.TextDocument) => Notebook, readonly check: (notebook: Notebook) => Generator<void, void>, readonly done: (document: vscode.TextDocument) => void) {}

  isWorkedOut(document: vscode.TextDocument): boolean {
    return this.#prepared.has(document) || this.of(document).entries.length <= longFrom
  }

  prepare(document: vscode.TextDocument): void {
    if (this.#preparing.has(document)) return
    this.#preparing.add(document)
    void this.#workOut(document).finally(() => this.#preparing.delete(document))
  }

  async #workOut(document: vscode.TextDocument): Promise<void> {
    await new Promise((resolve) => setTimeout(resolve, firstSightMs))
    const pause = stretches()
    for (let notebook: Notebook | undefined; notebook !== this.of(document);) {
      notebook = this.of(document)
      const work = this.#steps(notebook, document)
      while (notebook === this.of(document) && !work.next().done) {
        await pause()
        if (document.isClosed) return
      }
    }
    this.#prepared.add(document)
    this.done(document)
  }

  * #steps(notebook: Notebook, document: vscode.TextDocument): Generator<void, void> {
    yield* this.check(notebook)
    yield* workOutGrid(notebook, displayUnitsFor(document.uri))
  }
}
