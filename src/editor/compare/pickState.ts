import * as vscode from 'vscode'
import type { Entry } from '../../core/notebook/notebook'
import { say } from '../../core/words/say'
import type { StateSource } from '../../protocol'
import { pickNotebook } from './pickNotebook'
import { pickRevision } from './pickRevision'
import { isSameText, revisionName } from './sources'
import type { States } from './states'
import { asText } from '../asText'
import type { Steps } from '../steps'

interface Item extends vscode.QuickPickItem {
  choose?: () => Promise<StateSource | undefined>
}

/** What the question is about. */
interface Question {
  title: string
  /** The state that is chosen now, whose notebook's entries are offered first. */
  from: StateSource
  /** The state on the other side. */
  beside?: StateSource
}

/** Asks for a state: an entry of the notebook, another version of it, or another notebook. */
export async function pickState(question: Question, states: States, steps: Steps): Promise<StateSource | undefined> {
  const { title, from } = question
  const ref = await states.read(from)
  const items = [
    ...entryItems(question, ref.notebook.broken || ref.notebook.entries.length === 0 ? [] : ref.notebook.entries, ref.file),
    ...versionItems(question, states, steps),
    { label: say('Another notebook…'), iconPath: new vscode.ThemeIcon('files'), choose: () => another(states, steps) },
  ]
  const chosen = await steps.ask(items, { title, placeholder: say('An entry, or where else to take the state from') })
  return chosen?.choose?.()
}

/** The newest first; what the entry on the other side comes from before all of them. */
function entryItems({ from, beside }: Question, entries: readonly Entry[], file: string): Item[] {
  if (entries.length === 0) return []
  const other = beside && isSameText(beside, from) ? entries.find(({ key }) => key === beside.entry) ?? entries.at(-1) : undefined
  const now = from.entry ?? entries.at(-1)!.key
  const item = (entry: Entry, more = ''): Item => ({
    label: asText(entry.key), description: asText([entry.date?.value, more, entry.asFound ? say('as found') : '', entry.baseline ? say('baseline') : '', entry.key === now ? say('shown now') : ''].filter(Boolean).join(' · ')),
    ...(entry.reason ? { detail: asText(entry.reason.value.replace(/\s+/g, ' ').trim()) } : {}), choose: async () => ({ ...from, entry: entry.key }),
  })
  const parent = other?.parent
  return [
    ...(parent ? [separator(say`What ${other.key} comes from`), item(parent)] : []),
    separator(say`Entries of ${file}`),
    ...[...entries].reverse().map((entry) => item(entry)),
  ]
}

function versionItems({ from }: Question, states: States, steps: Steps): Item[] {
  const { uri, entry } = from
  const plain = { uri, ...(entry === undefined ? {} : { entry }) }
  const isPlain = from.revision === undefined && !from.saved
  const version = (source: StateSource) => withEntryThere(source, states)
  return [
    separator(say('The same notebook otherwise')),
    ...(isPlain ? [] : [{ label: say('As it is now'), description: say('with what is not saved yet'), iconPath: new vscode.ThemeIcon('edit'), choose: () => version(plain) }]),
    ...(from.saved ? [] : [{ label: say('As last saved'), iconPath: new vscode.ThemeIcon('save'), choose: () => version({ ...plain, saved: true as const }) }]),
    {
      label: say('At a git revision…'), iconPath: new vscode.ThemeIcon('git-commit'), ...(from.revision ? { description: asText(say`${revisionName(from.revision)} now`) } : {}),
      choose: async () => {
        const revision = await pickRevision(vscode.Uri.parse(uri), states.revisions, steps)
        return revision === undefined ? undefined : version({ ...plain, revision })
      },
    },
    separator(say('Elsewhere')),
  ]
}

/** The same entry in another version, or the last one where that version has no such entry. */
async function withEntryThere(source: StateSource, states: States): Promise<StateSource> {
  const { entry, ...rest } = source
  if (entry === undefined) return rest
  const { notebook } = await states.read(rest)
  return notebook.entries.some(({ key }) => key === entry) ? source : rest
}

/** A notebook, then an entry of it. */
async function another(states: States, steps: Steps): Promise<StateSource | undefined> {
  const uri = await pickNotebook({ title: say('Compare: which notebook?'), always: true }, steps)
  if (!uri) return undefined
  const source: StateSource = { uri: uri.toString() }
  const { notebook } = await states.read(source)
  return notebook.entries.length > 1 ? pickState({ title: say('Compare: which state of it?'), from: source }, states, steps) : source
}

const separator = (label: string): Item => ({ label, kind: vscode.QuickPickItemKind.Separator })
