import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { sentence } from '../../core/words/sentence'
import type { GridSession } from '../grid/gridSession'
import { today } from '../today'
import { asText } from '../asText'

/**
 * Goes back to an entry by a new one that comes from it, with the reason that is asked for, as one undo step; then
 * offers the list of what to turn. Leaving the question leaves the notebook as it is.
 *
 * @param given the entry's key; the one selected where none is given
 */
export async function returnTo(session: GridSession, given?: string): Promise<void> {
  await session.settle()
  const column = given ?? session.selected.at(-1)
  const { entries } = session.notebooks.of(session.document).notebook
  const wanted = entries.find(({ key }) => key === column)
  const before = entries.at(-1)
  if (!wanted || !before) return void vscode.window.showInformationMessage(say('Select the entry to go back to.'))
  const gesture = { kind: 'returnTo' as const, column: wanted.key, date: today() }
  const whyNot = (reason: string) => {
    const why = session.whyNot({ ...gesture, reason: reason.trim() })
    return why === undefined ? undefined : sentence(why)
  }
  // Asked before the reason is, and while it is written: nobody should write one in vain, or lose it to a change meanwhile.
  const why = whyNot('to see whether it can be done')
  if (why !== undefined) return void vscode.window.showWarningMessage(asText(why))
  const reason = await vscode.window.showInputBox({
    title: say`Return to ${wanted.key}: why?`, prompt: say('The reason stands in the new entry. Weeks later it tells whether going back was right.'), ignoreFocusOut: true,
    validateInput: (text) => (text.trim() === '' ? say('Write a reason, or press Escape to leave everything as it is.') : whyNot(text)),
  })
  if (reason === undefined) return
  const added = await session.perform({ ...gesture, reason: reason.trim() })
  if (added) await offerTurns(session.document.uri, { from: before.key, to: added.column, back: wanted.key })
}

async function offerTurns(uri: vscode.Uri, { from, to, back }: Record<'from' | 'to' | 'back', string>): Promise<void> {
  const show = say('Turn List')
  const chosen = await vscode.window.showInformationMessage(asText(say`Entry ${to} goes back to ${back}. The machine still stands as in ${from} until it is turned.`), show)
  if (chosen === show) await vscode.commands.executeCommand('detent.turnList', { uri: uri.toString(), entry: from }, { uri: uri.toString(), entry: to })
}
