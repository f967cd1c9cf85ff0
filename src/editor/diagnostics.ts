import * as vscode from 'vscode'
import type { Finding } from '../core/finding'
import { lineStarts } from '../core/text'
import { speaksOfShape, withoutTold } from '../language'
import { toRange, toSeverity } from './convert'
import { isNotebook, type Notebooks } from './notebooks'

/**
 * How long, in ms, a text rests before its problems are handed over: shortly where it is typed into itself. A grid tells its findings
 * itself, and the editor takes so long over a thousand problems that the next keys would wait for them.
 */
const restMs = { asText: 120, elsewhere: 700 }

/** Shows the findings of every open notebook in its text and in the Problems panel, less what a YAML extension shows there already. */
export function registerDiagnostics(notebooks: Notebooks): vscode.Disposable {
  const collection = vscode.languages.createDiagnosticCollection('detent')
  const shown = new Map<string, Shown>()
  const show = (document: vscode.TextDocument) => {
    if (!isNotebook(document) || document.uri.scheme === 'git') return
    // Told when it is.
    if (!notebooks.isWorkedOut(document)) return notebooks.prepare(document)
    const findings = untold(document, notebooks.of(document).findings)
    // Showing tells everyone that problems have changed, us too: the same findings are not shown again.
    const now = { version: document.version, findings }
    if (isSame(shown.get(document.uri.toString()), now)) return
    shown.set(document.uri.toString(), now)
    collection.set(document.uri, findings.map((finding) => toDiagnostic(document, finding)))
  }
  const showAll = () => vscode.workspace.textDocuments.forEach(show)
  const resting = new Map<string, ReturnType<typeof setTimeout>>()
  const showSoon = (document: vscode.TextDocument) => {
    const key = document.uri.toString()
    clearTimeout(resting.get(key))
    resting.set(key, setTimeout(() => {
      resting.delete(key)
      if (!document.isClosed) show(document)
    }, vscode.window.activeTextEditor?.document === document ? restMs.asText : restMs.elsewhere))
  }
  showAll()
  return vscode.Disposable.from(
    collection,
    notebooks.onDidChange(showSoon),
    new vscode.Disposable(() => resting.forEach(clearTimeout)),
    vscode.languages.onDidChangeDiagnostics(({ uris }) => {
      const changed = new Set(uris.map(String))
      vscode.workspace.textDocuments.filter(({ uri }) => changed.has(uri.toString())).forEach(show)
    }),
    vscode.workspace.onDidChangeConfiguration((event) => event.affectsConfiguration('detent.shapeProblems') && showAll()),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => {
      shown.delete(uri.toString())
      collection.delete(uri)
    }),
  )
}

function untold(document: vscode.TextDocument, findings: readonly Finding[]): readonly Finding[] {
  if (vscode.workspace.getConfiguration('detent', document.uri).get('shapeProblems') === 'always') return findings
  const others = vscode.languages.getDiagnostics(document.uri).filter(({ source }) => speaksOfShape(source))
  return others.length === 0 ? findings : withoutTold(findings, lineStarts(document.getText()), new Set(others.map(({ range }) => range.start.line)))
}

/** What is shown of a document, and for which version of its text. */
interface Shown {
  version: number
  findings: readonly Finding[]
}

/** Each version of a text is read once, so its findings are the very same objects. */
function isSame(before: Shown | undefined, now: Shown): boolean {
  return before?.version === now.version && before.findings.length === now.findings.length && now.findings.every((finding, at) => finding === before.findings[at])
}

function toDiagnostic(document: vscode.TextDocument, { range, message, severity, code }: Finding): vscode.Diagnostic {
  const diagnostic = new vscode.Diagnostic(toRange(document, range), message, toSeverity(severity))
  diagnostic.code = code
  diagnostic.source = 'detent'
  return diagnostic
}
