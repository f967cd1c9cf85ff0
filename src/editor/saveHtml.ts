import * as vscode from 'vscode'
import { say } from '../core/words/say'
import { asText } from './asText'

/**
 * Asks where a page is to be saved, writes it there and offers to show it in the browser, which prints it. Nothing is
 * written where the question is left. It works wherever the editor can write files, be they here, remote or on the web.
 *
 * @param beside the notebook it belongs to; its folder is offered
 */
export async function saveHtml(html: string, beside: vscode.Uri, name: string): Promise<void> {
  const folder = vscode.workspace.fs.isWritableFileSystem(beside.scheme) ? vscode.Uri.joinPath(beside, '..') : vscode.workspace.workspaceFolders?.[0]?.uri
  const file = `${name.replace(/[^\p{L}\p{N}._-]+/gu, '-')}.html`
  const target = await vscode.window.showSaveDialog({ title: say('Save page to print'), filters: { [say('Web page')]: ['html'] }, ...(folder ? { defaultUri: vscode.Uri.joinPath(folder, file) } : {}) })
  if (!target) return
  await vscode.workspace.fs.writeFile(target, new TextEncoder().encode(html))
  const path = vscode.workspace.asRelativePath(target, false)
  // A browser on this machine reaches only files of this machine.
  if (target.scheme !== 'file' || vscode.env.remoteName !== undefined) return void vscode.window.showInformationMessage(asText(say`Saved as ${path}. Open it in a browser to print it.`))
  const open = say('Open in Browser')
  if ((await vscode.window.showInformationMessage(asText(say`Saved as ${path}.`), open)) === open) await vscode.env.openExternal(target)
}
