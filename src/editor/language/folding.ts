import * as vscode from 'vscode'
import { foldingRanges } from '../../language'
import { notebookPattern, type Notebooks } from '../notebooks'

export function registerFolding(notebooks: Notebooks): vscode.Disposable {
  return vscode.languages.registerFoldingRangeProvider({ pattern: notebookPattern }, {
    provideFoldingRanges: (document) => foldingRanges(notebooks.of(document).notebook).map(({ start, end, kind }) =>
      new vscode.FoldingRange(document.positionAt(start).line, document.positionAt(end).line, kind && vscode.FoldingRangeKind.Comment)),
  })
}
