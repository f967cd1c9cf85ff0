import * as vscode from 'vscode'
import type { GridPlace } from '../../core/grid/view'
import type { StateSource } from '../../protocol'
import type { Sessions } from '../grid/sessions'
import { viewType } from '../notebooks'
import type { Revisions } from './revisions'

/** Shows a cell in the grid of the notebook it is from; in the grid that is open on it, where one is. */
export async function openPlace(source: StateSource, place: GridPlace, { sessions, revisions }: { sessions: Sessions; revisions: Revisions }): Promise<void> {
  const uri = await addressOf(source, revisions)
  if (!uri) return
  const open = sessions.on(uri)[0]
  if (open) open.panel.reveal()
  else await vscode.commands.executeCommand('vscode.openWith', uri, viewType)
  for (const session of open ? [open] : sessions.on(uri)) session.reveal(place)
}

/** Shows a line, counted from 1, in the text it is from. */
export async function openLine(source: StateSource, line: number, revisions: Revisions): Promise<void> {
  const uri = await addressOf(source, revisions)
  if (!uri) return
  const at = new vscode.Position(Math.max(0, line - 1), 0)
  await vscode.window.showTextDocument(uri, { selection: new vscode.Range(at, at) })
}

/** Where the editor has a side's text; what was saved is shown where it can be edited. */
async function addressOf({ uri, revision }: StateSource, revisions: Revisions): Promise<vscode.Uri | undefined> {
  const file = vscode.Uri.parse(uri)
  if (revision === undefined) return file
  const found = await revisions.read(file, revision)
  return 'missing' in found ? undefined : revisions.address(found.uri, revision)
}
