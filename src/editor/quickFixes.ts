import * as vscode from 'vscode'
import type { Finding } from '../core/finding'
import { say } from '../core/words/say'
import { codeActions, type CodeAction } from '../language'
import { toEdit, toRange } from './convert'
import { isNotebook, notebookPattern, type Notebooks } from './notebooks'

/** Puts the cursor where an action left something to be written. Only our own actions call it, so no menu lists it. */
const putCursor = 'detent.putCursor'

/** Offers what can be done about a finding, and the way from it to its cell. */
export function registerQuickFixes(notebooks: Notebooks): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.commands.registerCommand(putCursor, moveCursor),
    vscode.languages.registerCodeActionsProvider({ pattern: notebookPattern }, {
      provideCodeActions(document, range, context) {
        if (!isNotebook(document)) return []
        const { notebook, findings } = notebooks.of(document)
        const here = { start: document.offsetAt(range.start), end: document.offsetAt(range.end) }
        const touched = findings.filter((finding) => toRange(document, finding.range).intersection(range))
        return [...codeActions(notebook, touched, here).map((action) => toAction(document, action, context)), ...touched.flatMap((finding) => showInGrid(document, finding, context))]
      },
    }, { providedCodeActionKinds: [vscode.CodeActionKind.QuickFix] }),
  )
}

function toAction(document: vscode.TextDocument, { title, changes, preferred, cursor, finding }: CodeAction, context: vscode.CodeActionContext): vscode.CodeAction {
  const action = new vscode.CodeAction(title, vscode.CodeActionKind.QuickFix)
  action.edit = toEdit(document, changes)
  action.diagnostics = diagnosticsOf(finding, context)
  action.isPreferred = preferred
  if (cursor !== undefined) action.command = { title, command: putCursor, arguments: [document.uri, cursor] }
  return action
}

function showInGrid(document: vscode.TextDocument, finding: Finding, context: vscode.CodeActionContext): vscode.CodeAction[] {
  if (finding.place?.entry === undefined) return []
  const show = new vscode.CodeAction(say('Show in the grid'), vscode.CodeActionKind.QuickFix)
  show.command = { title: show.title, command: 'detent.showInGrid', arguments: [document.uri, { column: finding.place.entry, row: finding.place.row ?? '' }] }
  show.diagnostics = diagnosticsOf(finding, context)
  return [show]
}

function diagnosticsOf(finding: Finding, context: vscode.CodeActionContext): vscode.Diagnostic[] {
  return context.diagnostics.filter(({ source, code }) => source === 'detent' && code === finding.code)
}

function moveCursor(uri: vscode.Uri, offset: number): void {
  const editor = vscode.window.activeTextEditor
  if (editor?.document.uri.toString() !== uri.toString()) return
  const at = editor.document.positionAt(offset)
  editor.selection = new vscode.Selection(at, at)
  editor.revealRange(new vscode.Range(at, at))
}
