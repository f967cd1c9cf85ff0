import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import type { StateSource } from '../../protocol'
import { openPlace } from '../compare/openSides'
import type { States } from '../compare/states'
import type { Sessions } from '../grid/sessions'
import { viewType } from '../notebooks'
import { searchSetups } from './searchSetups'
import { openNode, SetupsTree, type SetupNode } from './setupsTree'
import { WorkspaceNotebooks } from './workspaceNotebooks'

/** What a team has in its workspace: the tree of all notebooks and the search over their entries. */
export function registerTeam(states: States, sessions: Sessions, view: vscode.TreeView<unknown>): vscode.Disposable & { tree: SetupsTree } {
  const workspace = new WorkspaceNotebooks(states.notebooks)
  const tree = new SetupsTree(workspace)
  const open = (uri: vscode.Uri, entry: string | undefined) => (entry === undefined
    ? vscode.commands.executeCommand('vscode.openWith', uri, viewType)
    : openPlace({ uri: uri.toString() }, { column: entry, row: '' }, { sessions, revisions: states.revisions }))
  const on = (name: string, act: (node?: SetupNode) => unknown) => vscode.commands.registerCommand(name, act)
  return Object.assign(vscode.Disposable.from(
    workspace, tree,
    workspace.onDidRead(() => Object.assign(view, { message: leftWords(workspace.left) })),
    view.onDidChangeVisibility(({ visible }) => visible && tree.redraw()),
    on(openNode, (node) => node && open(node.uri, stateOf(node).entry)),
    on('detent.setups.openText', (node) => node && vscode.commands.executeCommand('vscode.openWith', node.uri, 'default')),
    on('detent.setups.refresh', () => workspace.refresh()),
    on('detent.setups.compare', (node) => node && vscode.commands.executeCommand('detent.compare', ...pairOf(node))),
    on('detent.setups.turnList', (node) => node && vscode.commands.executeCommand('detent.turnList', { uri: node.uri.toString() }, stateOf(node))),
    on('detent.setups.sheet', (node) => node && vscode.commands.executeCommand('detent.printSheet', stateOf(node))),
    on('detent.searchSetups', async () => {
      const found = await searchSetups(workspace)
      if (found) await open(found.source, found.entry.key)
    }),
  ), { tree })
}

/** What the view says where reading was cancelled. */
function leftWords(left: number): string | undefined {
  if (left === 0) return undefined
  return left === 1 ? say('One more notebook was not read; “Refresh Setups” goes on.') : say`${left} more notebooks were not read; “Refresh Setups” goes on.`
}

/** The state of an entry; of a notebook, that of its last one. */
function stateOf(node: SetupNode): StateSource {
  const entry = node.kind === 'entry' ? node.summary.key : node.known.notebook.entries.at(-1)?.key
  return { uri: node.uri.toString(), ...(entry === undefined ? {} : { entry }) }
}

/** An entry against the last one; the last one, or a notebook, against what it comes from. */
function pairOf(node: SetupNode): [StateSource, StateSource] | [StateSource] {
  const state = stateOf(node)
  if (node.kind === 'entry') return [state, { uri: state.uri }]
  const parent = node.known.notebook.entries.at(-1)?.parent?.key
  return parent === undefined ? [state] : [{ uri: state.uri, entry: parent }, state]
}
