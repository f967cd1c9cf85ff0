import * as vscode from 'vscode'
import { oneLine } from '../../core/compare/oneLine'
import { searchInSteps, type Found, type Match } from '../../core/search/searchNotebooks'
import { say } from '../../core/words/say'
import type { KnownNotebook, WorkspaceNotebooks } from './workspaceNotebooks'
import { asText } from '../asText'
import { stretches } from '../stretches'

interface Item extends vscode.QuickPickItem {
  match?: Match<vscode.Uri>
}

/** More than this nobody reads: the search is to be narrowed. */
const most = 200
const restMs = 80

/** Asks for words or positions and lists the entries that have them, newest first; gives the one chosen. */
export async function searchSetups(workspace: WorkspaceNotebooks): Promise<Match<vscode.Uri> | undefined> {
  const pick = vscode.window.createQuickPick<Item>()
  // What was found is in order of time. Where an editor does not know this, it sorts by name what it finds in names.
  Object.assign(pick, { sortByLabel: false })
  pick.title = say('Search setups')
  pick.placeholder = say('Words of a reason, feel or note, or: softest fork_rebound, fork_rebound >= 12 out')
  pick.busy = true
  let waiting: ReturnType<typeof setTimeout> | undefined
  let asked = 0
  const show = async () => {
    const mine = ++asked
    pick.busy = true
    const all = await workspace.all()
    const found = await lookThrough(all, pick.value, () => mine !== asked)
    if (!found) return
    pick.busy = false
    pick.items = itemsFor(found, all.length)
  }
  return new Promise((resolve) => {
    pick.onDidChangeValue(() => {
      clearTimeout(waiting)
      waiting = setTimeout(() => void show(), restMs)
    })
    pick.onDidAccept(() => {
      const match = pick.selectedItems[0]?.match
      if (!match) return
      resolve(match)
      pick.hide()
    })
    pick.onDidHide(() => {
      clearTimeout(waiting)
      asked++
      resolve(undefined)
      pick.dispose()
    })
    pick.show()
    void show()
  })
}

/** What is found, in short stretches; nothing where something else is asked meanwhile. */
async function lookThrough(all: readonly KnownNotebook[], typed: string, isGivenUp: () => boolean): Promise<Found<vscode.Uri> | undefined> {
  const giveWay = stretches()
  const steps = searchInSteps(all.map(({ uri, notebook }) => ({ source: uri, notebook })), typed)
  while (!isGivenUp()) {
    const { done, value } = steps.next()
    if (done) return value
    await giveWay()
  }
  return undefined
}

function itemsFor({ matches, problems }: Found<vscode.Uri>, notebooks: number): Item[] {
  const told = [...problems, ...(matches.length === 0 && problems.length === 0 ? [notebooks === 0 ? say('There is no setup notebook in this workspace.') : say('No entry has all of that.')] : [])]
  const beyond = matches.length > most ? [say`${matches.length - most} more, all older: ask for more words to narrow it.`] : []
  return [...told.map(note), ...matches.slice(0, most).map(itemOf), ...beyond.map(note)]
}

const note = (words: string): Item => ({ label: `$(info) ${asText(words)}`, alwaysShow: true })

function itemOf(match: Match<vscode.Uri>): Item {
  const { machine, entry, source, found, stands } = match
  const name = machine || vscode.workspace.asRelativePath(source)
  const said = found.map(({ label, text }) => `${label}: ${text}`).join(' · ')
  return {
    label: asText(`${oneLine(name)} · ${oneLine(entry.key)}`), description: asText([entry.date?.value, ...stands].filter(Boolean).join(' · ')), ...(said ? { detail: asText(said) } : {}),
    alwaysShow: true, match,
  }
}
