import * as vscode from 'vscode'
import type { Severity } from '../../core/finding'
import { daysWords } from '../../core/summary/daysSince'
import { summarizeNotebook, tallyWords, worstOf, type EntrySummary, type NotebookSummary, type Tally } from '../../core/summary/summarizeNotebook'
import { say } from '../../core/words/say'
import { stretches } from '../stretches'
import { today } from '../today'
import type { KnownNotebook, WorkspaceNotebooks } from './workspaceNotebooks'

/** A notebook in the tree; one and the same object as long as the file is there. */
export interface NotebookNode {
  kind: 'notebook'
  uri: vscode.Uri
  known: KnownNotebook
  /** Another goes by the same name, so that the file has to be told. */
  twin?: boolean
}

export interface EntryNode {
  kind: 'entry'
  uri: vscode.Uri
  summary: EntrySummary
}

export type SetupNode = NotebookNode | EntryNode

export const openNode = 'detent.setups.open'

/** The notebooks of the workspace with what was done last, when, and what is open; below each its entries, newest first. */
export class SetupsTree implements vscode.TreeDataProvider<SetupNode>, vscode.Disposable {
  readonly #nodes = new Map<string, NotebookNode>()
  readonly #changed = new vscode.EventEmitter<SetupNode | undefined>()
  readonly #subscription: vscode.Disposable
  readonly onDidChangeTreeData = this.#changed.event

  constructor(readonly workspace: WorkspaceNotebooks) {
    this.#subscription = workspace.onDidChange((uri) => void this.#follow(uri))
  }

  async getChildren(node?: SetupNode): Promise<SetupNode[]> {
    if (node?.kind === 'entry') return []
    if (node) return [...summaryOf(node.known).entries].reverse().map((summary): EntryNode => ({ kind: 'entry', uri: node.uri, summary }))
    const all = await this.workspace.all()
    const titles = new Map<KnownNotebook, string>()
    const [named, giveWay] = [new Map<string, number>(), stretches()]
    for (const known of all) {
      const title = titleOf(known)
      titles.set(known, title)
      named.set(title, (named.get(title) ?? 0) + 1)
      await giveWay()
    }
    const nodes = all.map((known) => Object.assign(this.#nodeOf(known), { twin: named.get(titles.get(known)!)! > 1 }))
    return nodes.sort((a, b) => titles.get(a.known)!.localeCompare(titles.get(b.known)!))
  }

  getTreeItem(node: SetupNode): vscode.TreeItem {
    return node.kind === 'notebook' ? notebookItem(node) : entryItem(node)
  }

  /** Draws everything anew: the days have gone on. */
  redraw(): void {
    this.#changed.fire(undefined)
  }

  dispose(): void {
    this.#subscription.dispose()
    this.#changed.dispose()
  }

  #nodeOf(known: KnownNotebook): NotebookNode {
    const key = known.uri.toString()
    const node = this.#nodes.get(key) ?? { kind: 'notebook', uri: known.uri, known }
    node.known = known
    this.#nodes.set(key, node)
    return node
  }

  async #follow(uri: vscode.Uri | undefined): Promise<void> {
    const node = uri && this.#nodes.get(uri.toString())
    const known = node && await this.workspace.get(uri)
    if (!node || !known || titleOf(known) !== titleOf(node.known)) return this.#changed.fire(undefined)
    node.known = known
    this.#changed.fire(node)
  }
}

/** A day's summaries: the tree asks for each several times. */
const summaries = new WeakMap<KnownNotebook, { day: string; summary: NotebookSummary }>()

function summaryOf(known: KnownNotebook): NotebookSummary {
  const day = today()
  const kept = summaries.get(known)
  if (kept?.day === day) return kept.summary
  const summary = summarizeNotebook(known.notebook, known.findings, day)
  summaries.set(known, { day, summary })
  return summary
}

function titleOf(known: KnownNotebook): string {
  return summaryOf(known).title || fileName(known.uri)
}

const fileName = ({ path }: vscode.Uri) => path.slice(path.lastIndexOf('/') + 1)

function notebookItem({ uri, known, twin }: NotebookNode): vscode.TreeItem {
  const { title, trouble, entries, open, days } = summaryOf(known)
  const last = entries.at(-1)
  const path = vscode.workspace.asRelativePath(uri)
  const item = new vscode.TreeItem(title || fileName(uri), entries.length > 0 ? vscode.TreeItemCollapsibleState.Collapsed : vscode.TreeItemCollapsibleState.None)
  // What is open first: in a narrow sidebar the end is cut off.
  const lastWords = last ? [entryWords(last.key), days === undefined ? '' : daysWords(days), last.date].filter(Boolean) : [say('no entries yet')]
  const openWords = known.unfinished ? say('findings are being worked out') : tallyWords(open) || say('nothing open')
  const said = trouble ? [say`cannot be read: line ${trouble.line}`] : [...(worstOf(open) || known.unfinished ? [openWords] : []), ...lastWords]
  item.id = uri.toString()
  item.description = [...(twin ? [path] : []), ...said].join(' · ')
  item.tooltip = [path, trouble ? say`Line ${trouble.line}: ${trouble.message}` : say`Last entry: ${lastWords.join(' · ')}`, last?.reason, say`Findings: ${openWords}${earlierWords(known, open)}`].filter(Boolean).join('\n')
  item.accessibilityInformation = { label: [item.label as string, ...(twin ? [path] : []), ...(trouble ? said : [openWords, ...lastWords])].join(', ') }
  item.iconPath = iconOf(trouble ? 'error' : worstOf(open), known.unfinished ? 'ellipsis' : 'check')
  item.contextValue = last ? 'notebook' : 'emptyNotebook'
  item.command = { title: say('Open'), command: openNode, arguments: [{ kind: 'notebook', uri, known } satisfies NotebookNode] }
  return item
}

/** The grid and the Problems panel count these as well. */
function earlierWords({ findings }: KnownNotebook, open: Tally): string {
  const earlier = findings.length - open.error - open.warning - open.info
  return earlier === 0 ? '' : say`; ${earlier} about how it stood earlier`
}

function entryItem({ uri, summary }: EntryNode): vscode.TreeItem {
  const { key, date, reason, from, asFound, baseline, verdict, findings } = summary
  const item = new vscode.TreeItem(key)
  const marks = [date, asFound ? say('as found') : '', baseline ? say('baseline') : '', from ? say`from ${from}` : ''].filter(Boolean)
  item.id = `${uri.toString()}#${key}`
  item.description = [...marks, reason.replace(/\s+/g, ' ')].filter(Boolean).join(' · ')
  item.tooltip = [`${key} · ${marks.join(' · ')}`, reason, verdict && say`Verdict: ${verdict}`, worstOf(findings) ? say`Findings: ${tallyWords(findings)}` : ''].filter(Boolean).join('\n')
  item.accessibilityInformation = { label: [key, ...marks, reason, tallyWords(findings)].filter(Boolean).join(', ') }
  item.iconPath = entryIcon(findings, baseline)
  item.contextValue = 'entry'
  item.command = { title: say('Open'), command: openNode, arguments: [{ kind: 'entry', uri, summary } satisfies EntryNode] }
  return item
}

/** An entry known by its number alone would read like a tally. */
function entryWords(key: string): string {
  return /^\d+$/.test(key) ? say`entry ${key}` : key
}

function entryIcon(findings: Tally, baseline: boolean): vscode.ThemeIcon {
  return iconOf(worstOf(findings), baseline ? 'bookmark' : 'circle-outline')
}

/** The severity by the icon's shape first, and by its colour as well. */
function iconOf(severity: Severity | undefined, otherwise: string): vscode.ThemeIcon {
  switch (severity) {
    case 'error': return new vscode.ThemeIcon('error', new vscode.ThemeColor('list.errorForeground'))
    case 'warning': return new vscode.ThemeIcon('warning', new vscode.ThemeColor('list.warningForeground'))
    case 'info': return new vscode.ThemeIcon('info')
    case undefined: return new vscode.ThemeIcon(otherwise)
  }
}
