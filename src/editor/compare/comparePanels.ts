import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { watchForBlank } from '../blankPages'
import type { Sessions } from '../grid/sessions'
import { compareViewType } from '../names'
import { newPanel } from '../newPanel'
import type { Notebooks } from '../notebooks'
import { ComparePanel, type PanelPorts, type Sources } from './comparePanel'
import { openLine, openPlace } from './openSides'
import { readSource } from './sources'
import type { States } from './states'

const filterKey = 'detent.compare.onlyDifferences'
/** Changes that come in quick succession, such as keys, are shown together. */
const restMs = 60

/** The comparisons that are open, and what keeps them up to date. */
export class ComparePanels implements vscode.Disposable {
  readonly #open = new Set<ComparePanel>()
  readonly #watchers = new Map<string, vscode.FileSystemWatcher>()
  readonly #subscriptions: vscode.Disposable[]
  readonly #waiting = new Map<ComparePanel, ReturnType<typeof setTimeout>>()
  #hasTurnList: Promise<boolean> | undefined

  constructor(readonly context: vscode.ExtensionContext, readonly notebooks: Notebooks, readonly sessions: Sessions, readonly states: States) {
    this.#subscriptions = [
      notebooks.onDidChange(({ uri }) => this.#updateOn(uri)),
      notebooks.logs.onDidChange((uri) => this.#updateOn(uri)),
      vscode.workspace.onDidSaveTextDocument(({ uri }) => this.#updateOn(uri)),
      vscode.workspace.onDidChangeConfiguration((event) => event.affectsConfiguration('detent') && this.#updateAll()),
      states.revisions.onDidChange(() => this.#each((panel) => panel.readsGit)),
    ]
  }

  /** The comparison that has the focus. */
  get active(): ComparePanel | undefined {
    return [...this.#open].find(({ panel }) => panel.active)
  }

  /** Shows two states side by side; in the tab that shows the very same, where there is one. */
  async show(sources: Sources): Promise<void> {
    const same = [...this.#open].find((each) => JSON.stringify(each.sources) === JSON.stringify(sources))
    if (same) return same.panel.reveal()
    await this.#adopt(newPanel(compareViewType, say('Compare')), sources)
  }

  /** Hides the rows that are alike, or shows them again, in all comparisons. */
  async toggleFilter(): Promise<void> {
    await this.#setFilter(!this.#filter)
    this.#updateAll()
  }

  dispose(): void {
    for (const each of [...this.#subscriptions, ...this.#watchers.values()]) each.dispose()
    for (const timer of this.#waiting.values()) clearTimeout(timer)
  }

  get #filter(): boolean {
    return this.context.globalState.get(filterKey) === true
  }

  async #setFilter(onlyDifferences: boolean): Promise<void> {
    await this.context.globalState.update(filterKey, onlyDifferences)
  }

  async #adopt(panel: vscode.WebviewPanel, sources: Sources, isSecond = false): Promise<void> {
    this.#hasTurnList ??= Promise.resolve(vscode.commands.getCommands(true)).then((all) => all.includes('detent.turnList'))
    const mine = new ComparePanel(panel, sources, this.#ports(await this.#hasTurnList))
    this.#open.add(mine)
    mine.onDidChangeSources(() => this.#watch())
    if (!isSecond) watchForBlank(panel, () => mine.hasSpoken, () => void this.#adopt(newPanel(compareViewType, say('Compare'), panel.viewColumn), mine.sources, true).then(() => panel.dispose()))
    panel.onDidDispose(() => {
      this.#open.delete(mine)
      this.#watch()
    })
    this.#watch()
  }

  #ports(hasTurnList: boolean): PanelPorts {
    const { context, states, sessions } = this
    const { revisions } = states
    return {
      extension: context.extensionUri, states, hasTurnList,
      filter: { get: () => this.#filter, set: (onlyDifferences) => void this.#setFilter(onlyDifferences) },
      open: {
        place: (source, place) => openPlace(source, place, { sessions, revisions }),
        line: (source, line) => openLine(source, line, revisions),
        turnList: async ({ left, right }) => void (await vscode.commands.executeCommand('detent.turnList', left, right)),
      },
    }
  }

  /** After the window was reloaded: a panel from what its page kept. */
  async restore(panel: vscode.WebviewPanel, kept: unknown): Promise<void> {
    const { left, right } = (kept as { sources?: { left?: unknown; right?: unknown } } | undefined)?.sources ?? {}
    const [one, other] = [readSource(left), readSource(right)]
    if (one && other) await this.#adopt(panel, { left: one, right: other })
    else panel.dispose()
  }

  /** Follows the files that are compared on disk: what is in no editor changes without a word otherwise. */
  #watch(): void {
    const wanted = new Set([...this.#open].flatMap(({ sources }) => [sources.left.uri, sources.right.uri]))
    for (const [uri, watcher] of this.#watchers) {
      if (wanted.has(uri)) continue
      watcher.dispose()
      this.#watchers.delete(uri)
    }
    for (const uri of wanted) if (!this.#watchers.has(uri)) this.#watchers.set(uri, this.#watcherOf(vscode.Uri.parse(uri)))
  }

  #watcherOf(uri: vscode.Uri): vscode.FileSystemWatcher {
    const watcher = vscode.workspace.createFileSystemWatcher(new vscode.RelativePattern(vscode.Uri.joinPath(uri, '..'), globOf(uri)))
    const update = () => this.#updateOn(uri)
    watcher.onDidChange(update)
    watcher.onDidCreate(update)
    watcher.onDidDelete(update)
    return watcher
  }

  #updateOn(uri: vscode.Uri): void {
    this.#each((panel) => panel.reads(uri))
  }

  #updateAll(): void {
    this.states.forget()
    this.#each(() => true)
  }

  #each(concerns: (panel: ComparePanel) => boolean): void {
    for (const panel of [...this.#open].filter(concerns)) {
      clearTimeout(this.#waiting.get(panel))
      this.#waiting.set(panel, setTimeout(() => void panel.update(), restMs))
    }
  }
}

/** A file's name as a pattern that means it alone. */
function globOf({ path }: vscode.Uri): string {
  return path.slice(path.lastIndexOf('/') + 1).replace(/[*?[\]{}]/g, '[$&]')
}
