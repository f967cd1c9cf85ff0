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
import { compareViewType, turnsViewType } from './names'
import { Notebooks } from './notebooks'
import { registerQuickFixes } from './quickFixes'
import { registerSheet } from './sheet'
import { standIn, type Late } from './standIn'
import { registerTeam } from './team'
import { registerTurns } from './turns'
import { speakDisplayLanguage } from './words'

/** What a browser's host starts, which loads one file and no other. */
export function activate(context: vscode.ExtensionContext): void {
  standIn(context, () => Promise.resolve({ registerAll }))
}

/** The composition root: a list of what the extension registers, in the order of dependency. */
export function registerAll(context: vscode.ExtensionContext, setupsView: vscode.TreeView<unknown>): Late {
  speakDisplayLanguage()
  const logs = new Logs(context.extensionUri)
  const notebooks = new Notebooks(logs)
  const sessions = new Sessions()
  const revisions = new Revisions()
  const states = new States(notebooks, revisions)
  const grids = registerGridEditor(context, notebooks, sessions)
  const comparisons = registerCompare(context, notebooks, sessions, states)
  const turns = registerTurns(context, notebooks, sessions, states)
  const team = registerTeam(states, sessions, setupsView)
  context.subscriptions.push(
    logs,
    notebooks,
    sessions,
    revisions,
    grids,
    registerStatusBar(sessions),
    registerDiagnostics(notebooks),
    registerQuickFixes(notebooks),
    registerLanguage(notebooks),
    registerCommands(notebooks, sessions),
    comparisons,
    vscode.commands.registerCommand('detent.describeLogger', () => describeLogger(notebooks, logs)),
    turns,
    registerSheet(notebooks, sessions),
    team,
  )
  return { gridEditor: grids.provider, panels: { [compareViewType]: comparisons.serializer, [turnsViewType]: turns.serializer }, setups: team.tree as vscode.TreeDataProvider<unknown> }
}
