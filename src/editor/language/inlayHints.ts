import * as vscode from 'vscode'
import { inlayHints } from '../../language'
import { notebookPattern, type Notebooks } from '../notebooks'

const setting = 'detent.inlayHints'

export function registerInlayHints(notebooks: Notebooks): vscode.Disposable {
  const changed = new vscode.EventEmitter<void>()
  return vscode.Disposable.from(
    changed,
    vscode.workspace.onDidChangeConfiguration((event) => event.affectsConfiguration(setting) && changed.fire()),
    vscode.languages.registerInlayHintsProvider({ pattern: notebookPattern }, {
      onDidChangeInlayHints: changed.event,
      provideInlayHints(document, range) {
        if (!vscode.workspace.getConfiguration('detent', document).get<boolean>('inlayHints')) return []
        const shown = { start: document.offsetAt(range.start), end: document.offsetAt(range.end) }
        return inlayHints(notebooks.of(document).notebook, shown).map(({ at, label, about }) => {
          const hint = new vscode.InlayHint(document.positionAt(at), label)
          hint.tooltip = about
          hint.paddingLeft = true
          return hint
        })
      },
    }),
  )
}
