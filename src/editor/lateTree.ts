import * as vscode from 'vscode'
import { notebookPattern, setupsView } from './names'
import type { Late } from './standIn'

/**
 * The view of all notebooks from the first moment on. It is empty where there are none; when somebody looks at it and there are
 * some, the whole is loaded and asked for them.
 */
export class LateTree implements vscode.Disposable, vscode.TreeDataProvider<unknown> {
  readonly view: vscode.TreeView<unknown>
  readonly #changed = new vscode.EventEmitter<unknown>()
  readonly #subscriptions: vscode.Disposable[]
  readonly onDidChangeTreeData = this.#changed.event
  #source: Late['setups'] | undefined
  #came = false

  constructor(readonly hasNotebooks: Promise<boolean>, readonly whole: () => Promise<Late>) {
    const watcher = vscode.workspace.createFileSystemWatcher(notebookPattern, false, true, true)
    const came = watcher.onDidCreate(() => {
      came.dispose()
      this.#came = true
      if (!this.#source) this.#changed.fire(undefined)
    })
    this.view = vscode.window.createTreeView(setupsView, { treeDataProvider: this, showCollapseAll: true })
    this.#subscriptions = [this.#changed, watcher, this.view]
  }

  async getChildren(node?: unknown): Promise<unknown[]> {
    if (!this.#source && !this.#came && !await this.hasNotebooks) return []
    return (await (await this.whole()).setups.getChildren(node)) ?? []
  }

  getTreeItem(node: unknown): vscode.TreeItem | Thenable<vscode.TreeItem> {
    return this.#source!.getTreeItem(node)
  }

  /** From now on it shows this. */
  follow(source: Late['setups']): void {
    this.#source = source
    if (source.onDidChangeTreeData) this.#subscriptions.push(source.onDidChangeTreeData((node) => this.#changed.fire(node)))
    this.#changed.fire(undefined)
  }

  dispose(): void {
    for (const each of this.#subscriptions) each.dispose()
  }
}
