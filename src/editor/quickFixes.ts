import * as vscode from 'vscode'
import type { Finding } from '../core/finding'
import { toEdit, toRange } from './convert'
import { isNotebook, notebookPattern, type Notebooks } from './notebooks'

/** Offers the fixes that findings carry, and the way from a finding to its cell. */
export function registerQuickFixes(notebooks: Notebooks): vscode.Disposable {
  return vscode.languages.registerCodeActionsProvider({ pattern: notebookPattern }, {
    provideCodeActions(document, range, context) {
      if (!isNotebook(document)) return []
      return notebooks.of(document).findings
        .filter((finding) => toRange(document, finding.range).intersection(range))
        .flatMap((finding) => actionsFor(document, finding, context))
    },
  }, { providedCodeActionKinds: [vscode.CodeActionKind.QuickFix] })
}

function actionsFor(document: vscode.TextDocument, finding: Finding, context: vscode.CodeActionContext): vscode.CodeAction[] {
  const diagnostics = context.diagnostics.filter(({ source, code }) => source === 'detent' && code === finding.code)
  const fixes = (finding.fixes ?? []).map(({ title, changes }) => {
    const action = new vscode.CodeAction(title, vscode.CodeActionKind.QuickFix)
    action.edit = toEdit(document, changes)
    action.diagnostics = diagnostics
    action.isPreferred = finding.fixes!.length === 1
    return action
  })
  if (finding.place?.entry === undefined) return fixes
  const show = new vscode.CodeAction('Show in the grid', vscode.CodeActionKind.QuickFix)
  show.command = { title: show.title, command: 'detent.showInGrid', arguments: [document.uri, { column: finding.place.entry, row: finding.place.row ?? '' }] }
  show.diagnostics = diagnostics
  return [...fixes, show]
}
