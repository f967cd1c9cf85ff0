import * as vscode from 'vscode'
import type { Answer } from '../../core/grid/applyGesture'
import type { TextChange } from '../../core/text'
import { say } from '../../core/words/say'
import { toEdit } from '../convert'

/** How often an edit is computed anew when the text changed under it. */
const tries = 5

/**
 * Applies edits to documents one after the other. VS Code refuses an edit that was computed for an older text and says
 * so only by `false`; here it is computed again for the new one, so that none is lost silently.
 */
export class EditQueue {
  readonly #tails = new Map<string, Promise<unknown>>()

  /**
   * Runs `compute` on the document as it then is and applies what it gives. The answer's refusal is passed through.
   * `ahead` hears what is about to be written: what it sends leaves before the edit does.
   */
  run(document: vscode.TextDocument, compute: () => Answer, ahead?: Ahead): Promise<Answer> {
    const key = document.uri.toString()
    const before = this.#tails.get(key) ?? Promise.resolve()
    // An answer comes in any case: a page that waits for one in vain believes that nobody listens.
    const mine = before.then(() => applyComputed(document, compute, ahead)).catch(notTaken)
    this.#tails.set(key, mine)
    void mine.then(() => this.#tails.get(key) === mine && this.#tails.delete(key))
    return mine
  }

  /** Resolves when every edit asked for so far is done. */
  async idle(document: vscode.TextDocument): Promise<void> {
    await this.#tails.get(document.uri.toString())
  }
}

/** Hears what is about to be written to a document. The text need not come to be: an edit may be refused yet. */
export type Ahead = (changes: readonly TextChange[]) => void

async function applyComputed(document: vscode.TextDocument, compute: () => Answer, ahead?: Ahead): Promise<Answer> {
  for (let attempt = 0; attempt < tries; attempt++) {
    const answer = compute()
    if (answer.changes === undefined || answer.changes.length === 0) return answer
    ahead?.(answer.changes)
    if (await vscode.workspace.applyEdit(toEdit(document, answer.changes))) return answer
  }
  return { refused: say('the text keeps changing, so nothing was written; try again') }
}

const notTaken = (error: unknown): Answer => ({ refused: say`the editor did not take it: ${error instanceof Error ? error.message : String(error)}` })
