import * as vscode from 'vscode'
import { say } from '../../core/words/say'

/** Why nothing of a document can be written, in words; `undefined` where it can. */
export function whyReadOnly({ uri: { scheme } }: vscode.TextDocument): string | undefined {
  if (scheme === 'git' || vscode.workspace.fs.isWritableFileSystem(scheme) === false) return say('This is a version to read, not to edit.')
  return undefined
}
