import * as vscode from 'vscode'

/** Watches the folders that logs lie in, each once however many notebooks name logs in it. */
export class LogWatch implements vscode.Disposable {
  readonly #wanted = new Map<string, readonly string[]>()
  readonly #watchers = new Map<string, vscode.Disposable>()

  constructor(readonly changed: (log: vscode.Uri) => void) {}

  /** The logs somebody wants to hear of from now on, in place of those before. */
  set(who: string, logs: readonly vscode.Uri[]): void {
    this.#wanted.set(who, [...new Set(logs.map((log) => vscode.Uri.joinPath(log, '..').toString()))])
    if (logs.length === 0) this.#wanted.delete(who)
    const folders = new Set([...this.#wanted.values()].flat())
    for (const [folder, watcher] of this.#watchers) {
      if (folders.has(folder)) continue
      watcher.dispose()
      this.#watchers.delete(folder)
    }
    for (const folder of folders) if (!this.#watchers.has(folder)) this.#watchers.set(folder, this.#watch(vscode.Uri.parse(folder)))
  }

  dispose(): void {
    for (const watcher of this.#watchers.values()) watcher.dispose()
    this.#watchers.clear()
  }

  #watch(folder: vscode.Uri): vscode.Disposable {
    const watcher = vscode.workspace.createFileSystemWatcher(new vscode.RelativePattern(folder, '*'))
    return vscode.Disposable.from(watcher, watcher.onDidCreate(this.changed), watcher.onDidChange(this.changed), watcher.onDidDelete(this.changed))
  }
}
