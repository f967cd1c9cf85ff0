import type * as vscode from 'vscode'
import { registerCommands } from './commands'
import { registerDiagnostics } from './diagnostics'
import { registerGridEditor } from './grid/gridEditor'
import { Sessions } from './grid/sessions'
import { registerLanguage } from './language'
import { Notebooks } from './notebooks'
import { registerQuickFixes } from './quickFixes'

/** The composition root: a list of what the extension registers, in the order of dependency. */
export function activate(context: vscode.ExtensionContext): void {
  const notebooks = new Notebooks()
  const sessions = new Sessions()
  context.subscriptions.push(
    notebooks,
    sessions,
    registerGridEditor(context, notebooks, sessions),
    registerDiagnostics(notebooks),
    registerQuickFixes(notebooks),
    registerLanguage(notebooks),
    registerCommands(notebooks, sessions),
  )
}
