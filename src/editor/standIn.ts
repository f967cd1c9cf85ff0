import * as vscode from 'vscode'
import { isNotebookPath } from '../core/notebook/fileName'
import { LateTree } from './lateTree'
import { compareViewType, notebookPattern, turnsViewType, viewType } from './names'

/** What the editor may ask for before the whole is there, and waits for. */
export interface Late {
  gridEditor: vscode.CustomTextEditorProvider
  panels: Readonly<Record<typeof compareViewType | typeof turnsViewType, vscode.WebviewPanelSerializer>>
  setups: vscode.TreeDataProvider<unknown>
}

interface Whole {
  registerAll: (context: vscode.ExtensionContext, setupsView: vscode.TreeView<unknown>) => Late
}

/**
 * Stands in for the whole of the extension, which is loaded when the first notebook is seen or something of ours is asked for.
 * Every window that shows any YAML starts us, and most of them have nothing to do with us.
 */
export function standIn(context: vscode.ExtensionContext, load: () => Promise<Whole>): void {
  let loading: Promise<Late> | undefined
  const whole = () => loading ??= load().then(({ registerAll }) => {
    makeWay.dispose()
    const late = registerAll(context, tree.view)
    tree.follow(late.setups)
    return late
  })
  const tree = new LateTree(tellWorkspace(), whole)
  // Of a command there may be one only.
  const makeWay = vscode.Disposable.from(
    ...commandsOf(context).map((name) => vscode.commands.registerCommand(name, (...given: unknown[]) => whole().then(() => vscode.commands.executeCommand(name, ...given)))),
    vscode.workspace.onDidOpenTextDocument((document) => void (isNotebookPath(document.uri.path) && whole())),
  )
  context.subscriptions.push(
    makeWay,
    tree,
    vscode.window.registerCustomEditorProvider(viewType, {
      resolveCustomTextEditor: async (document, panel, token) => (await whole()).gridEditor.resolveCustomTextEditor(document, panel, token),
    }, { supportsMultipleEditorsPerDocument: true }),
    ...([compareViewType, turnsViewType] as const).map((type) => vscode.window.registerWebviewPanelSerializer(type, {
      deserializeWebviewPanel: async (panel, kept) => (await whole()).panels[type].deserializeWebviewPanel(panel, kept),
    })),
  )
  if (seesNotebook()) void whole()
}

/** Open as a text, or as a grid that another host left behind. */
function seesNotebook(): boolean {
  return vscode.workspace.textDocuments.some(({ uri }) => isNotebookPath(uri.path))
    || vscode.window.tabGroups.all.some(({ tabs }) => tabs.some(({ input }) => input instanceof vscode.TabInputCustom && input.viewType === viewType))
}

/** Menus that cannot tell what file they are about are shown where there are notebooks at all. */
async function tellWorkspace(): Promise<boolean> {
  const found = await vscode.workspace.findFiles(notebookPattern, undefined, 1)
  await vscode.commands.executeCommand('setContext', 'detent.hasNotebooks', found.length > 0)
  return found.length > 0
}

function commandsOf({ extension }: vscode.ExtensionContext): string[] {
  const { contributes } = extension.packageJSON as { contributes: { commands: { command: string }[] } }
  return contributes.commands.map(({ command }) => command)
}
