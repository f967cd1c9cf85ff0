import * as vscode from 'vscode'
import { asNotebookPath } from '../../core/notebook/fileName'
import { say } from '../../core/words/say'
import { viewType } from '../notebooks'

/** Makes an empty notebook where the person says and opens it as a grid, which offers the ways to begin. */
export async function newNotebook(): Promise<void> {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri
  const target = await vscode.window.showSaveDialog({
    title: say('New setup notebook'),
    filters: { [say('Setup notebook')]: ['setup.yaml'] },
    ...(folder ? { defaultUri: vscode.Uri.joinPath(folder, 'machine.setup.yaml') } : {}),
  })
  if (!target) return
  const uri = target.with({ path: asNotebookPath(target.path) })
  const edit = new vscode.WorkspaceEdit()
  edit.createFile(uri, { ignoreIfExists: true })
  await vscode.workspace.applyEdit(edit)
  await vscode.commands.executeCommand('vscode.openWith', uri, viewType)
}
