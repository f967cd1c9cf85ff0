import * as vscode from 'vscode'
import { definitionAt, highlightsAt, referencesAt } from '../../language'
import { toRange } from '../convert'
import { notebookPattern, type Notebooks } from '../notebooks'

/** From a name to its definition and to every other place that says it. */
export function registerNames(notebooks: Notebooks): vscode.Disposable {
  const selector = { pattern: notebookPattern }
  return vscode.Disposable.from(
    vscode.languages.registerDefinitionProvider(selector, {
      provideDefinition(document, position): vscode.LocationLink[] {
        const link = definitionAt(notebooks.of(document).notebook, document.offsetAt(position))
        return (link?.to ?? []).map((to) => ({ originSelectionRange: toRange(document, link!.from), targetUri: document.uri, targetRange: toRange(document, to) }))
      },
    }),
    vscode.languages.registerReferenceProvider(selector, {
      provideReferences: (document, position, { includeDeclaration }) =>
        referencesAt(notebooks.of(document).notebook, document.offsetAt(position), includeDeclaration).map((range) => new vscode.Location(document.uri, toRange(document, range))),
    }),
    vscode.languages.registerDocumentHighlightProvider(selector, {
      provideDocumentHighlights: (document, position) =>
        highlightsAt(notebooks.of(document).notebook, document.offsetAt(position)).map(({ range, role }) =>
          new vscode.DocumentHighlight(toRange(document, range), role === 'definition' ? vscode.DocumentHighlightKind.Write : vscode.DocumentHighlightKind.Read)),
    }),
  )
}
