import * as vscode from 'vscode'
import type { GridPlace } from '../../core/grid/view'
import type { GridCommand } from '../../protocol'
import { activeNotebook } from '../activeNotebook'
import type { Sessions } from '../grid/sessions'
import { viewType, type Notebooks } from '../notebooks'
import { addAdjuster } from './addAdjuster'
import { newNotebook } from './newNotebook'
import { openSample } from './openSample'
import { openAsText } from './openAsText'
import { reopen } from './reopen'
import { returnTo } from './returnTo'

/** Commands that act on the grid in focus, by their name in the manifest. */
const gridCommands: Record<string, GridCommand> = {
  'detent.addEntry': 'addEntry',
  'detent.annotate': 'annotate',
  'detent.editHeader': 'editHeader',
  'detent.nextFinding': 'nextFinding',
  'detent.previousFinding': 'previousFinding',
  'detent.showFindings': 'showFindings',
  'detent.clearCell': 'clearCell',
  'detent.showCard': 'showCard',
  'detent.whatNext': 'whatNext',
  'detent.showCharts': 'showCharts',
  'detent.nudgeMore': 'nudgeMore',
  'detent.nudgeLess': 'nudgeLess',
  'detent.setBothLegs': 'setBothLegs',
  'detent.fillRight': 'fillRight',
  'detent.fillDown': 'fillDown',
  'detent.find': 'find',
  'detent.findNext': 'findNext',
  'detent.findPrevious': 'findPrevious',
  'detent.filter': 'filter',
  'detent.changedOnly': 'changedOnly',
  'detent.withFindingsOnly': 'withFindingsOnly',
  'detent.showAll': 'showAll',
  'detent.toggleGroup': 'toggleGroup',
  'detent.widenColumn': 'widenColumn',
  'detent.narrowColumn': 'narrowColumn',
  'detent.pinEntry': 'pinEntry',
  'detent.pinRow': 'pinRow',
  'detent.selectRow': 'selectRow',
  'detent.selectColumn': 'selectColumn',
  'detent.selectAll': 'selectAll',
  'detent.duplicateEntry': 'duplicateEntry',
  'detent.insertEntry': 'insertEntry',
  'detent.removeEntry': 'removeEntry',
  'detent.moveEntryLeft': 'moveEntryLeft',
  'detent.moveEntryRight': 'moveEntryRight',
  'detent.removeAdjuster': 'removeAdjuster',
  'detent.duplicateAdjuster': 'duplicateAdjuster',
  'detent.moveAdjusterUp': 'moveAdjusterUp',
  'detent.moveAdjusterDown': 'moveAdjusterDown',
}

/** Registers every command of the manifest; a test holds the two lists against each other. */
export function registerCommands(notebooks: Notebooks, sessions: Sessions): vscode.Disposable {
  return vscode.Disposable.from(
    ...Object.entries(gridCommands).map(([name, command]) => vscode.commands.registerCommand(name, async () => (await sessions.toFront())?.give(command))),
    vscode.commands.registerCommand('detent.openAsText', async (uri?: vscode.Uri) => {
      const target = uri ?? activeNotebook()
      if (!target) return
      await Promise.all(sessions.on(target).map((session) => session.settle()))
      await openAsText(await vscode.workspace.openTextDocument(target), notebooks)
    }),
    vscode.commands.registerCommand('detent.openAsGrid', async (uri?: vscode.Uri) => {
      const target = uri ?? activeNotebook()
      if (target) await reopen(target, viewType)
    }),
    vscode.commands.registerCommand('detent.showInGrid', async (uri?: vscode.Uri, place?: GridPlace) => {
      const target = uri ?? activeNotebook()
      if (!target) return
      await reopen(target, viewType)
      if (place) for (const session of sessions.on(target)) session.reveal(place)
    }),
    vscode.commands.registerCommand('detent.newNotebook', newNotebook),
    vscode.commands.registerCommand('detent.openSample', openSample),
    vscode.commands.registerCommand('detent.returnTo', async (menu?: { column?: unknown }) => {
      const column = menu?.column
      const session = await sessions.toFront()
      if (session) await returnTo(session, typeof column === 'string' ? column : undefined)
    }),
    vscode.commands.registerCommand('detent.addAdjuster', async () => {
      const session = await sessions.toFront()
      if (session) await addAdjuster(session)
    }),
  )
}
