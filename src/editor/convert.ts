import * as vscode from 'vscode'
import type { Severity } from '../core/finding'
import type { Range, TextChange } from '../core/text'

/** Offsets of core as a range of the editor. */
export function toRange(document: vscode.TextDocument, { start, end }: Range): vscode.Range {
  return new vscode.Range(document.positionAt(start), document.positionAt(end))
}

/** Changes of core as one edit, hence one undo step. */
export function toEdit(document: vscode.TextDocument, changes: readonly TextChange[]): vscode.WorkspaceEdit {
  const edit = new vscode.WorkspaceEdit()
  edit.set(document.uri, changes.map((change) => vscode.TextEdit.replace(toRange(document, change), change.text)))
  return edit
}

export function toSeverity(severity: Severity): vscode.DiagnosticSeverity {
  return { error: vscode.DiagnosticSeverity.Error, warning: vscode.DiagnosticSeverity.Warning, info: vscode.DiagnosticSeverity.Information }[severity]
}
