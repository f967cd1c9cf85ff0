import type * as vscode from 'vscode'
import { standIn } from './standIn'

/** What an editor with Node starts: the whole is a file of its own, loaded when there is something for it to do. */
export function activate(context: vscode.ExtensionContext): void {
  standIn(context, () => import('./whole'))
}
