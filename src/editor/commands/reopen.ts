import * as vscode from 'vscode'

/**
 * Opens a file in another kind of editor in the place of the one that shows it now, so that no second tab is left
 * behind. The document stays the same: nothing is saved, and undo goes on across the switch.
 *
 * What is not saved keeps the tab it had: the editor looks at tabs of one kind alone, and would ask whether to save or lose
 * what the other kind shows as well.
 */
export async function reopen(uri: vscode.Uri, viewType: string, options: vscode.TextDocumentShowOptions = {}): Promise<void> {
  const { viewColumn } = vscode.window.tabGroups.activeTabGroup
  await vscode.commands.executeCommand('vscode.openWith', uri, viewType, { viewColumn, ...options })
  // Looked for only now: opening may have replaced the old tab by itself.
  const old = vscode.window.tabGroups.all.find((group) => group.viewColumn === viewColumn)?.tabs.find(({ input }) => showsOtherwise(input, uri, viewType))
  if (old && !isDirty(uri)) await vscode.window.tabGroups.close(old, true)
  // Closing may leave the keyboard in the page that is gone.
  await vscode.commands.executeCommand('workbench.action.focusActiveEditorGroup')
}

function isDirty(uri: vscode.Uri): boolean {
  return vscode.workspace.textDocuments.some((document) => document.isDirty && document.uri.toString() === uri.toString())
}

/** Whether a tab shows this file, and not in this kind of editor. */
function showsOtherwise(input: unknown, uri: vscode.Uri, viewType: string): boolean {
  if (input instanceof vscode.TabInputText) return viewType !== 'default' && input.uri.toString() === uri.toString()
  return input instanceof vscode.TabInputCustom && input.viewType !== viewType && input.uri.toString() === uri.toString()
}
