import * as vscode from 'vscode'

/** What one step asks. */
interface Step<T> {
  title: string
  placeholder?: string
  /** Lines beside the items for what is typed. */
  typed?: (value: string) => T[]
}

/**
 * The one list that asks a question's steps one after the other. Were each step a list of its own, the keyboard would go back to the page between
 * two of them, and a page that is late to take it closes the second.
 */
export class Steps {
  #pick: vscode.QuickPick<vscode.QuickPickItem> | undefined
  #step: vscode.Disposable | undefined
  #leave: (() => void) | undefined
  #isLeft = false

  /** The item that is chosen, or `undefined` where the list is left, at this step or after the one before. */
  ask<T extends vscode.QuickPickItem>(items: readonly T[], { title, placeholder, typed }: Step<T>): Promise<T | undefined> {
    if (this.#isLeft) return Promise.resolve(undefined)
    const pick = (this.#pick ??= this.#open()) as vscode.QuickPick<T>
    this.#step?.dispose()
    Object.assign(pick, { title, placeholder, value: '', matchOnDescription: true, matchOnDetail: true, busy: false, items })
    const chosen = new Promise<T | undefined>((resolve) => {
      this.#leave = () => resolve(undefined)
      this.#step = vscode.Disposable.from(
        pick.onDidChangeValue((value) => typed && (pick.items = value.trim() === '' ? items : [...items, ...typed(value.trim())])),
        pick.onDidAccept(() => {
          const [item] = pick.activeItems
          if (!item) return
          this.#step?.dispose()
          pick.busy = true
          resolve(item)
        }),
      )
    })
    pick.show()
    return chosen
  }

  /** Takes the list away, for something else that is to be seen. */
  close(): void {
    this.#step?.dispose()
    this.#pick?.dispose()
    this.#pick = this.#step = undefined
  }

  #open(): vscode.QuickPick<vscode.QuickPickItem> {
    const pick = vscode.window.createQuickPick()
    pick.onDidHide(() => {
      // Not where we have taken it away.
      if (this.#pick !== pick) return
      this.#isLeft = true
      this.#leave?.()
      this.close()
    })
    return pick
  }
}

/** Asks a question of several steps, in one list that is gone when it is answered. */
export async function inSteps<T>(question: (steps: Steps) => Promise<T>): Promise<T> {
  const steps = new Steps()
  try {
    return await question(steps)
  } finally {
    steps.close()
  }
}
