import * as vscode from 'vscode'
import { toRange, toSeverity } from './convert'
import { isNotebook, type Notebooks } from './notebooks'

/** Shows the findings of every open notebook in its text and in the Problems panel. */
export function registerDiagnostics(notebooks: Notebooks): vscode.Disposable {
  const collection = vscode.languages.createDiagnosticCollection('detent')
  const show = (document: vscode.TextDocument) => {
    if (!isNotebook(document) || document.uri.scheme === 'git') return
    collection.set(document.uri, notebooks.of(document).findings.map((finding) => {
      const diagnostic = new vscode.Diagnostic(toRange(document, finding.range), finding.message, toSeverity(finding.severity))
      diagnostic.code = finding.code
      diagnostic.source = 'detent'
      return diagnostic
    }))
  }
  vscode.workspace.textDocuments.forEach(show)
  return vscode.Disposable.from(
    collection,
    notebooks.onDidChange(show),
    vscode.workspace.onDidCloseTextDocument((document) => collection.delete(document.uri)),
  )
}
