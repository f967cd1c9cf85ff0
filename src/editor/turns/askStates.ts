import * as vscode from 'vscode'
import type { Entry, Notebook } from '../../core/notebook/notebook'
import { say } from '../../core/words/say'
import type { StateSource } from '../../protocol'
import { pickEntry } from '../pickEntry'
import type { Steps } from '../steps'
import type { TurnSources } from './turnsPanel'

/** What is asked from: a notebook, and the entry that is selected in it. */
export interface Asking {
  uri: vscode.Uri
  notebook: Notebook
  selected?: string
}

/** Asks for the state the machine is in, the last entry first, and for the one wanted. `undefined` where it is left. */
export async function askStates({ uri, notebook, selected }: Asking, steps: Steps): Promise<TurnSources | undefined> {
  const newest = [...notebook.entries].reverse()
  if (newest.length < 2) return void vscode.window.showInformationMessage(say('A turn list leads from one entry to another; this notebook has fewer than two.'))
  const from = await pickEntry(say('Turn list: where does the machine stand now?'), newest, steps)
  if (!from) return undefined
  const others = newest.filter((entry) => entry !== from)
  const first = others.filter(({ key }) => key === selected)
  const to = await pickEntry(say('Turn list: where should it stand?'), [...first, ...others.filter((entry) => !first.includes(entry))], steps)
  return to && { from: stateAt(uri, from), to: stateAt(uri, to) }
}

const stateAt = (uri: vscode.Uri, { key }: Entry): StateSource => ({ uri: uri.toString(), entry: key })
