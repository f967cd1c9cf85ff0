import * as vscode from 'vscode'
import { findRenamable, renameAt } from '../../language'
import { toEdit, toRange } from '../convert'
import { notebookPattern, type Notebooks } from '../notebooks'

/** Renames adjusters and entries. The editor shows the sentence of an error thrown here to the person. */
export function registerRename(notebooks: Notebooks): vscode.Disposable {
  return vscode.languages.registerRenameProvider({ pattern: notebookPattern }, {
    prepareRename(document, position) {
      const found = findRenamable(notebooks.of(document).notebook, document.offsetAt(position))
      if (found.refused !== undefined) throw new Error(found.refused)
      return { range: toRange(document, found.range), placeholder: found.name }
    },
    provideRenameEdits(document, position, name) {
      const { changes, refused } = renameAt(notebooks.of(document).notebook, document.offsetAt(position), name)
      if (!changes) throw new Error(refused)
      return toEdit(document, changes)
    },
  })
}
