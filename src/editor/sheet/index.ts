import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { activeNotebook } from '../activeNotebook'
import { pickNotebook } from '../compare/pickNotebook'
import { readSource } from '../compare/sources'
import type { Sessions } from '../grid/sessions'
import { newPanel } from '../newPanel'
import type { Notebooks } from '../notebooks'
import { pickEntry } from '../pickEntry'
import { inSteps, type Steps } from '../steps'
import { saveSheet, SheetPanel, sheetViewType } from './sheetPanel'
import { asText } from '../asText'

/** The hand-over sheet of an entry: shown as it will be on paper, and saved where the person says. */
export function registerSheet(notebooks: Notebooks, sessions: Sessions): vscode.Disposable {
  const open = new Set<SheetPanel>()
  return vscode.Disposable.from(
    vscode.commands.registerCommand('detent.printSheet', async (given?: unknown) => {
      const source = readSource(given)
      const chosen = await inSteps(async (steps) => {
        const uri = source ? vscode.Uri.parse(source.uri) : activeNotebook() ?? (await pickNotebook({ title: say('Hand-over sheet: of which notebook?') }, steps))
        const document = uri && (await vscode.workspace.openTextDocument(uri))
        const entry = document && (source?.entry ?? (await chosenEntry(document, notebooks, sessions, steps)))
        return document && entry !== undefined ? { document, entry } : undefined
      })
      if (!chosen) return
      const { document, entry } = chosen
      const sheet = new SheetPanel(newPanel(sheetViewType, say('Sheet')), document, entry, notebooks)
      open.add(sheet)
      sheet.panel.onDidDispose(() => open.delete(sheet))
    }),
    vscode.commands.registerCommand(saveSheet, () => ([...open].find(({ panel }) => panel.active) ?? [...open].at(-1))?.save()),
    notebooks.onDidChange((document) => [...open].filter((sheet) => sheet.document === document).forEach((sheet) => sheet.update())),
  )
}

/** The entry that is selected in the grid in front, else the one that is asked for. */
async function chosenEntry(document: vscode.TextDocument, notebooks: Notebooks, sessions: Sessions, steps: Steps): Promise<string | undefined> {
  const selected = await sessions.selectedIn(document.uri)
  const { broken, entries } = notebooks.of(document).notebook
  if (broken || entries.length === 0) return void vscode.window.showInformationMessage(broken ? asText(say`The text has an error, so there is no sheet: ${broken.message}`) : say('This notebook has no entries yet.'))
  return selected ?? (await pickEntry(say('Hand-over sheet: of which entry?'), [...entries].reverse(), steps))?.key
}
