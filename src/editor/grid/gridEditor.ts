import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import type { Notebooks } from '../notebooks'
import { watchForBlank } from '../blankPages'
import { EditQueue } from './editQueue'
import { GridSession } from './gridSession'
import { openActiveAnew } from './openAnew'
import { openOrphansAnew } from './openOrphansAnew'
import { pageHtml, webviewOptions } from './page'
import type { Sessions } from './sessions'

/** So long, in ms, it takes to ask for a page. What comes sooner holds that up; then there is time until the page is there. */
const pageAsksMs = 150

/** Opens notebooks as grids. The text document is the only model: save, undo, hot exit and backups are VS Code's own. */
export function registerGridEditor(context: vscode.ExtensionContext, notebooks: Notebooks, sessions: Sessions): vscode.Disposable & { provider: vscode.CustomTextEditorProvider } {
  const queue = new EditQueue()
  const anew = new Set<string>()
  const provider: vscode.CustomTextEditorProvider = {
    resolveCustomTextEditor(document, panel) {
      panel.webview.options = webviewOptions(context.extensionUri)
      const session = new GridSession(document, panel, notebooks, queue)
      sessions.add(session)
      const notebook = document.uri.toString()
      // Once: a machine that is that slow is not to be kept busy with it.
      if (!anew.has(notebook)) watchForBlank(panel, () => session.ready, () => void openActiveAnew(document.uri, anew))
      panel.onDidDispose(() => {
        sessions.remove(session)
        session.dispose()
      })
      panel.webview.html = pageHtml(panel.webview, context.extensionUri, 'grid', say('Setup notebook'), { notebook, session: vscode.env.sessionId, ...(anew.has(notebook) ? { anew: '' } : {}) })
      setTimeout(() => session.foresee(), pageAsksMs)
    },
  }
  return Object.assign(openOrphansAnew(sessions, anew), { provider })
}
