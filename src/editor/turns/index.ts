import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { activeNotebook } from '../activeNotebook'
import { watchForBlank } from '../blankPages'
import { pickNotebook } from '../compare/pickNotebook'
import { readSource } from '../compare/sources'
import type { States } from '../compare/states'
import type { Sessions } from '../grid/sessions'
import type { Notebooks } from '../notebooks'
import { turnsViewType } from '../names'
import { newPanel } from '../newPanel'
import { inSteps, type Steps } from '../steps'
import { askStates } from './askStates'
import { TurnsPanel, type TurnSources } from './turnsPanel'

/** The list of what to turn between two states, as a page of its own beside the grid. */
export function registerTurns(context: vscode.ExtensionContext, notebooks: Notebooks, sessions: Sessions, states: States): vscode.Disposable & { serializer: vscode.WebviewPanelSerializer } {
  const open = new Set<TurnsPanel>()
  const adopt = (panel: vscode.WebviewPanel, sources: TurnSources) => {
    const turns = new TurnsPanel(panel, sources, states, context.extensionUri)
    open.add(turns)
    panel.onDidDispose(() => open.delete(turns))
    return turns
  }
  const show = async (from?: unknown, to?: unknown) => {
    const sources = bothOf(readSource(from), readSource(to)) ?? (await inSteps((steps) => ask(notebooks, sessions, steps)))
    if (!sources) return
    const turns = adopt(newPanel(turnsViewType, say('Turn list')), sources)
    // One that is restored is left alone: its ticks would be gone.
    watchForBlank(turns.panel, () => turns.hasSpoken, () => {
      adopt(newPanel(turnsViewType, say('Turn list'), turns.panel.viewColumn), sources)
      turns.dispose()
    })
  }
  const active = () => [...open].find(({ panel }) => panel.active)
  const updates = new Map<TurnsPanel, ReturnType<typeof setTimeout>>()
  const updateSoon = (turns: TurnsPanel) => {
    clearTimeout(updates.get(turns))
    updates.set(turns, setTimeout(() => void turns.update(), restMs))
  }
  const serializer: vscode.WebviewPanelSerializer = {
    async deserializeWebviewPanel(panel, kept) {
      const { from, to } = (kept as { sources?: { from?: unknown; to?: unknown } } | undefined)?.sources ?? {}
      const sources = bothOf(readSource(from), readSource(to))
      if (sources) adopt(panel, sources)
      else panel.dispose()
    },
  }
  const all = vscode.Disposable.from(
    vscode.commands.registerCommand('detent.turnList', show),
    vscode.commands.registerCommand('detent.copyTurnList', () => active()?.copy()),
    vscode.commands.registerCommand('detent.saveTurnList', () => active()?.save()),
    notebooks.onDidChange((document) => [...open].filter((turns) => turns.reads(document.uri)).forEach(updateSoon)),
    { dispose: () => [...open].forEach((turns) => turns.dispose()) },
  )
  return Object.assign(all, { serializer })
}

/** A list that is read in the garage need not follow each key. */
const restMs = 300

function bothOf(from: TurnSources['from'] | undefined, to: TurnSources['to'] | undefined): TurnSources | undefined {
  return from && to && { from, to }
}

async function ask(notebooks: Notebooks, sessions: Sessions, steps: Steps): Promise<TurnSources | undefined> {
  const uri = activeNotebook() ?? (await pickNotebook({ title: say('Turn list: of which notebook?') }, steps))
  if (!uri) return undefined
  const document = await vscode.workspace.openTextDocument(uri)
  const selected = await sessions.selectedIn(uri)
  return askStates({ uri, notebook: notebooks.of(document).notebook, ...(selected === undefined ? {} : { selected }) }, steps)
}
