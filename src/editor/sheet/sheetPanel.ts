import * as vscode from 'vscode'
import { bareName } from '../../core/notebook/fileName'
import { makeSheet } from '../../core/sheet/makeSheet'
import { sheetHtml } from '../../core/sheet/sheetHtml'
import { say } from '../../core/words/say'
import { displayUnitsFor } from '../displayUnits'
import type { Notebooks } from '../notebooks'
import { saveHtml } from '../saveHtml'

export const sheetViewType = 'detent.sheet'
export const saveSheet = 'detent.saveSheet'

/** The hand-over sheet of an entry as it will be on paper. The page runs nothing; its one link is a command of ours. */
export class SheetPanel {
  #html = ''

  constructor(readonly panel: vscode.WebviewPanel, readonly document: vscode.TextDocument, readonly entry: string, readonly notebooks: Notebooks) {
    panel.title = say`Sheet ${entry}`
    panel.webview.options = { enableScripts: false, enableCommandUris: [saveSheet], localResourceRoots: [] }
    this.update()
  }

  /** Draws it anew where the notebook says something else by now; an entry that is gone stays as it was. */
  update(): void {
    const html = this.#sheet()
    if (html === undefined || html === this.#html) return
    this.#html = html
    this.panel.webview.html = withBar(html)
  }

  async save(): Promise<void> {
    await saveHtml(this.#html, this.document.uri, `${bareName(this.document.uri.path)}-${this.entry}`)
  }

  #sheet(): string | undefined {
    const { notebook, findings } = this.notebooks.of(this.document)
    const entry = notebook.broken ? undefined : notebook.entries.find(({ key }) => key === this.entry)
    return entry && sheetHtml(makeSheet(notebook, entry, displayUnitsFor(this.document.uri), findings))
  }
}

const bar = () => `<nav class="detent-bar" aria-label="${say('Sheet')}"><a href="command:${saveSheet}">${say('Save to print…')}</a> <span>${say('A browser prints the saved page: the editor itself cannot.')}</span></nav>`
/** The bar belongs to the editor and wears its theme; the sheet is paper, whatever the theme. */
const barStyle = `<style>
html { padding-top: 40px; }
body { padding-left: 16px; padding-right: 16px; color: #000; background: #fff; }
.detent-bar { position: fixed; z-index: 1; top: 0; left: 0; right: 0; height: 40px; padding: 8px 16px; overflow: hidden; white-space: nowrap; text-overflow: ellipsis; line-height: 22px; background: var(--vscode-editor-background); border-bottom: 1px solid var(--vscode-contrastBorder, var(--vscode-foreground)); color: var(--vscode-foreground); font: var(--vscode-font-size) var(--vscode-font-family); }
.detent-bar a { margin-right: 12px; padding: 3px 10px; background: var(--vscode-button-background); border: 1px solid var(--vscode-contrastBorder, transparent); color: var(--vscode-button-foreground); text-decoration: none; }
.detent-bar a:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: 2px; }
@media print { .detent-bar { display: none; } }
</style>`

function withBar(html: string): string {
  return html.replace('</head>', () => `${barStyle}\n</head>`).replace(/<body[^>]*>/, (body) => `${body}\n${bar()}`)
}

