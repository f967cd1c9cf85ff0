import * as vscode from 'vscode'

/** A tab of its own for a page that can be searched, in the group in front or in the one given. */
export function newPanel(viewType: string, title: string, column = vscode.ViewColumn.Active): vscode.WebviewPanel {
  return vscode.window.createWebviewPanel(viewType, title, column, { enableFindWidget: true })
}
