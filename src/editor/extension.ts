import * as vscode from 'vscode'
import { registerCommands } from './commands'
import { registerCompare } from './compare'
import { Revisions } from './compare/revisions'
import { States } from './compare/states'
import { registerDiagnostics } from './diagnostics'
import { registerGridEditor } from './grid/gridEditor'
import { Sessions } from './grid/sessions'
import { registerStatusBar } from './grid/statusBar'
import { registerLanguage } from './language'
import { describeLogger } from './logs/describeLogger'
import { Logs } from './logs/logs'
import { Notebooks } from './notebooks'
import { registerQuickFixes } from './quickFixes'
import { registerSheet } from './sheet'
import { registerTeam } from './team'
import { registerTurns } from './turns'
import { speakDisplayLanguage } from './words'

/** The composition root: a list of what the extension registers, in the order of dependency. */
export function activate(context: vscode.ExtensionContext): void {
  speakDisplayLanguage()
  const logs = new Logs(context.extensionUri)
  const notebooks = new Notebooks(logs)
  const sessions = new Sessions()
  const revisions = new Revisions()
  const states = new States(notebooks, revisions)
  context.subscriptions.push(
    logs,
    notebooks,
    sessions,
    revisions,
    registerGridEditor(context, notebooks, sessions),
    registerStatusBar(sessions),
    registerDiagnostics(notebooks),
    registerQuickFixes(notebooks),
    registerLanguage(notebooks),
    registerCommands(notebooks, sessions),
    registerCompare(context, notebooks, sessions, states),
    vscode.commands.registerCommand('detent.describeLogger', () => describeLogger(notebooks, logs)),
    registerTurns(context, notebooks, sessions, states),
    registerSheet(notebooks, sessions),
    registerTeam(states, sessions),
  )
}
