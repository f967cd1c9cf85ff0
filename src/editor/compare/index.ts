import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import type { StateSource } from '../../protocol'
import { activeNotebook } from '../activeNotebook'
import type { GridSession } from '../grid/gridSession'
import type { Sessions } from '../grid/sessions'
import { isNotebook, type Notebooks } from '../notebooks'
import { inSteps, type Steps } from '../steps'
import type { Sources } from './comparePanel'
import { ComparePanels } from './comparePanels'
import { pickNotebook } from './pickNotebook'
import { pickState } from './pickState'
import { readSource, sourceOf, wholeOf } from './sources'
import type { States } from './states'
import { asText } from '../asText'

/** Comparisons and all the ways to one. */
export function registerCompare(context: vscode.ExtensionContext, notebooks: Notebooks, sessions: Sessions, states: States): vscode.Disposable & { serializer: vscode.WebviewPanelSerializer } {
  const panels = new ComparePanels(context, notebooks, sessions, states)
  const on = (name: string, act: (...args: unknown[]) => unknown) => vscode.commands.registerCommand(name, act)
  const all = vscode.Disposable.from(
    panels,
    on('detent.compare', (left, right) => compareAsked(panels, readSource(left), readSource(right))),
    on('detent.compareSelected', async () => {
      const session = await sessions.toFront()
      if (session) await compareSelected(session, panels)
    }),
    on('detent.compareFiles', (_, uris) => compareFiles(uris, panels)),
    on('detent.compareWith', (uri) => compareWith(notebookOf(uri), panels)),
    on('detent.compareWithHead', (subject) => compareWithHead(subject, panels)),
    on('detent.compareWithSaved', (uri) => compareWithSaved(notebookOf(uri), panels)),
    on('detent.compareSwap', () => panels.active?.swap()),
    on('detent.compareOlder', () => panels.active?.step(false)),
    on('detent.compareNewer', () => panels.active?.step(true)),
    on('detent.compareLeft', () => panels.active?.choose('left')),
    on('detent.compareRight', () => panels.active?.choose('right')),
    on('detent.compareDifferences', () => panels.active && panels.toggleFilter()),
  )
  return Object.assign(all, { serializer: { deserializeWebviewPanel: (panel: vscode.WebviewPanel, kept: unknown) => panels.restore(panel, kept) } })
}

/** What a menu handed over, else the notebook in front. */
function notebookOf(subject: unknown): vscode.Uri | undefined {
  return subject instanceof vscode.Uri ? subject : activeNotebook()
}

/** The entries that a grid's selection begins and ends in; for a single one, it against the one it comes from. */
async function compareSelected(session: GridSession, panels: ComparePanels): Promise<void> {
  // What was pressed before counts before, though it comes from the page by another way than the command.
  await session.settle()
  const { document, selected } = session
  const source = sourceOf(document.uri)
  const [first, last] = [selected[0], selected.at(-1)]
  if (first !== last) return panels.show({ left: { ...source, entry: first! }, right: { ...source, entry: last! } })
  const { entries } = panels.notebooks.of(document).notebook
  const entry = entries.find(({ key }) => key === last) ?? entries.at(-1)
  if (!entry) return void vscode.window.showInformationMessage(say('There is no entry in this notebook yet that could be compared.'))
  const right = { ...source, entry: entry.key }
  if (entry.parent) return panels.show({ left: { ...source, entry: entry.parent.key }, right })
  const left = await inSteps((steps) => pickState({ title: say`${entry.key} comes from no other entry: compare it with which state?`, from: source }, panels.states, steps))
  if (left) await panels.show({ left, right })
}

/** Two files that were selected together, in the order the list has them. */
async function compareFiles(uris: unknown, panels: ComparePanels): Promise<void> {
  const files = Array.isArray(uris) ? uris.filter((each): each is vscode.Uri => each instanceof vscode.Uri && isNotebook({ uri: each })) : []
  const [left, right, ...more] = files
  if (!left || !right || more.length > 0) return void vscode.window.showInformationMessage(say('Select two setup notebooks to compare them.'))
  await panels.show({ left: sourceOf(left), right: sourceOf(right) })
}

async function compareWith(uri: vscode.Uri | undefined, panels: ComparePanels): Promise<void> {
  if (!uri) return
  const from = sourceOf(uri)
  const chosen = await inSteps((steps) => pickState({ title: say('Compare with which state?'), from }, panels.states, steps))
  if (chosen) await panels.show({ left: chosen, right: from })
}

/** Of the two states, those that the caller names are not asked for. */
async function compareAsked(panels: ComparePanels, from?: StateSource, to?: StateSource): Promise<void> {
  const sides = from && to ? { left: from, right: to } : await inSteps((steps) => askSides(panels.states, from, steps))
  if (sides) await panels.show(sides)
}

async function askSides(states: States, from: StateSource | undefined, steps: Steps): Promise<Sources | undefined> {
  const uri = from ? undefined : activeNotebook() ?? (await pickNotebook({ title: say('Compare: which notebook?') }, steps))
  if (!from && !uri) return undefined
  const left = from ?? (await pickState({ title: say('Compare: from which state?'), from: sourceOf(uri!) }, states, steps))
  if (!left) return undefined
  const right = await pickState({ title: say('Compare: with which state?'), from: wholeOf(left), beside: left }, states, steps)
  return right && { left, right }
}

/** The last commit against the file as it is, or as it is staged where that is what was pointed at. */
async function compareWithHead(subject: unknown, panels: ComparePanels): Promise<void> {
  const { uri, staged } = fromSourceControl(subject)
  if (!uri) return
  if (!isNotebook({ uri })) return void vscode.window.showInformationMessage(asText(say`${vscode.workspace.asRelativePath(uri)} is no setup notebook.`))
  const now: StateSource = { uri: sourceOf(uri).uri }
  await panels.show({ left: { ...now, revision: 'HEAD' }, right: staged ? { ...now, revision: '' } : now })
}

/** The group of what is staged, as the git extension numbers it. */
const stagedGroup = 1

function fromSourceControl(subject: unknown): { uri?: vscode.Uri; staged: boolean } {
  const resource = subject as { resourceUri?: unknown; resourceGroupType?: unknown } | undefined
  const uri = resource?.resourceUri instanceof vscode.Uri ? resource.resourceUri : notebookOf(subject)
  return { ...(uri ? { uri } : {}), staged: resource?.resourceGroupType === stagedGroup }
}

async function compareWithSaved(uri: vscode.Uri | undefined, panels: ComparePanels): Promise<void> {
  if (uri) await panels.show({ left: { uri: uri.toString(), saved: true }, right: { uri: uri.toString() } })
}
