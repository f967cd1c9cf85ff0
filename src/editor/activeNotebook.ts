import * as vscode from 'vscode'
import { isNotebook } from './notebooks'

/** The notebook of the active tab, be it a grid or a text. */
export function activeNotebook(): vscode.Uri | undefined {
  const input = vscode.window.tabGroups.activeTabGroup.activeTab?.input
  const uri = input instanceof vscode.TabInputCustom || input instanceof vscode.TabInputText ? input.uri : undefined
  return uri && isNotebook({ uri }) ? uri : undefined
}
