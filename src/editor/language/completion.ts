import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { complete, type Completion } from '../../language'
import { notebookPattern, type Notebooks } from '../notebooks'
import { readsSchema } from './schemaExtension'

/** Characters behind which something can follow without a letter being typed. */
const triggers = [' ', '{', '[', '/']

export function registerCompletion(notebooks: Notebooks): vscode.Disposable {
  return vscode.languages.registerCompletionItemProvider({ pattern: notebookPattern }, {
    provideCompletionItems(document, position) {
      const { notebook, findings } = notebooks.of(document)
      const found = complete(notebook, document.offsetAt(position), findings, notebooks.lastGood(document)?.notebook)
      if (!found) return undefined
      const start = document.positionAt(found.range.start)
      const range = { inserting: new vscode.Range(start, position), replacing: new vscode.Range(start, document.positionAt(found.range.end)) }
      const items = readsSchema('completion') ? found.items.filter(({ fromSchema }) => !fromSchema) : found.items
      // Units and positions hang on the number that is typed, so the list is asked for again with each digit.
      return new vscode.CompletionList(items.map((item, rank) => toItem(item, rank, range)), true)
    },
  }, ...triggers)
}

const kinds: Record<Completion['kind'], vscode.CompletionItemKind> = {
  key: vscode.CompletionItemKind.Property,
  adjuster: vscode.CompletionItemKind.Field,
  leg: vscode.CompletionItemKind.EnumMember,
  entry: vscode.CompletionItemKind.Reference,
  position: vscode.CompletionItemKind.Value,
  choice: vscode.CompletionItemKind.EnumMember,
  unit: vscode.CompletionItemKind.Unit,
  rule: vscode.CompletionItemKind.Constant,
  shape: vscode.CompletionItemKind.Snippet,
}

function toItem(completion: Completion, rank: number, range: { inserting: vscode.Range; replacing: vscode.Range }): vscode.CompletionItem {
  const { label, detail, about, insert, filter } = completion
  const item = new vscode.CompletionItem(detail === undefined ? label : { label, description: detail }, kinds[completion.kind])
  item.range = range
  item.insertText = completion.snippet ? new vscode.SnippetString(insert) : insert
  // The lines of a shape are indented as they are to stand.
  item.keepWhitespace = true
  item.sortText = String(rank).padStart(4, '0')
  if (about) item.documentation = new vscode.MarkdownString(about)
  if (filter) item.filterText = filter
  if (completion.again) item.command = { title: say('More'), command: 'editor.action.triggerSuggest' }
  return item
}
