import * as vscode from 'vscode'
import tern from '../../../samples/tern-650.setup.yaml'
import { viewType } from '../notebooks'

const name = 'tern-650.setup.yaml'

/**
 * Opens the notebook of an invented machine as a file that is not saved yet, so that nothing is written unasked; where the
 * workspace has a file of that name, that one.
 */
export async function openSample(): Promise<void> {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri
  const place = folder && vscode.Uri.joinPath(folder, name)
  if (place && (await exists(place))) return open(place)
  const uri = place?.with({ scheme: 'untitled' }) ?? vscode.Uri.from({ scheme: 'untitled', path: name })
  const document = await vscode.workspace.openTextDocument(uri)
  if (document.getText() === '') {
    const edit = new vscode.WorkspaceEdit()
    edit.insert(uri, new vscode.Position(0, 0), tern)
    await vscode.workspace.applyEdit(edit)
  }
  await open(uri)
}

async function open(uri: vscode.Uri): Promise<void> {
  await vscode.commands.executeCommand('vscode.openWith', uri, viewType)
}

function exists(uri: vscode.Uri): Promise<boolean> {
  return Promise.resolve(vscode.workspace.fs.stat(uri)).then(() => true, () => false)
}
