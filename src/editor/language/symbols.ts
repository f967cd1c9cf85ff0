import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { documentSymbols, type NotebookSymbol } from '../../language'
import { toRange } from '../convert'
import { notebookPattern, type Notebooks } from '../notebooks'

export function registerSymbols(notebooks: Notebooks): vscode.Disposable {
  return vscode.languages.registerDocumentSymbolProvider({ pattern: notebookPattern }, {
    provideDocumentSymbols: (document) => documentSymbols(notebooks.of(document).notebook).map((symbol) => toSymbol(document, symbol)),
  }, { label: say('Setup notebook') })
}

const kinds: Record<NotebookSymbol['kind'], vscode.SymbolKind> = {
  section: vscode.SymbolKind.Namespace,
  adjuster: vscode.SymbolKind.Object,
  entry: vscode.SymbolKind.Event,
  setting: vscode.SymbolKind.Field,
}

function toSymbol(document: vscode.TextDocument, { name, detail, kind, range, nameRange, children }: NotebookSymbol): vscode.DocumentSymbol {
  const symbol = new vscode.DocumentSymbol(name, detail, kinds[kind], toRange(document, range), toRange(document, nameRange))
  symbol.children = children.map((child) => toSymbol(document, child))
  return symbol
}
