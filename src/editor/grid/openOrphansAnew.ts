import * as vscode from 'vscode'
import { viewType } from '../notebooks'
import type { Sessions } from './sessions'

/** A grid that is shown is given to us at once; one that is not after this long has another host, which is gone. */
const patienceMs = 2000

/**
 * Opens grids anew whose extension host ended under them. The editor starts another host and leaves their tabs as they were:
 * they look alive, and nothing that is typed arrives. The notebook itself is the editor's own and lost nothing; what was typed
 * and not written the page kept. `anew` holds the notebooks that are being opened so, for the page to look for that.
 */
export function openOrphansAnew(sessions: Sessions, anew: Set<string>): vscode.Disposable {
  // What is opened from now on is ours from the start.
  const doubtful = new Set(vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs.flatMap((tab) => gridOf(tab)?.toString() ?? [])))
  let timer: ReturnType<typeof setTimeout> | undefined
  let looking = false
  const look = async (): Promise<void> => {
    if (looking) return soon()
    looking = true
    try {
      await lookOnce()
    } finally {
      looking = false
    }
  }
  const lookOnce = async (): Promise<void> => {
    for (const { activeTab } of vscode.window.tabGroups.all) {
      const uri = activeTab && gridOf(activeTab)
      if (uri && doubtful.delete(uri.toString()) && sessions.on(uri).length === 0) await openAnew(activeTab, uri, anew)
    }
  }
  function soon(): void {
    clearTimeout(timer)
    timer = setTimeout(() => void look(), patienceMs)
  }
  if (doubtful.size > 0) soon()
  return vscode.Disposable.from(vscode.window.tabGroups.onDidChangeTabs(() => doubtful.size > 0 && soon()), { dispose: () => clearTimeout(timer) })
}

/**
 * By way of a group beside: a document that is not saved is never without an editor then, so nobody is asked whether to save
 * it. A group that was left empty is gone by itself; else the grid goes back to where it was.
 */
async function openAnew(tab: vscode.Tab, uri: vscode.Uri, anew: Set<string>): Promise<void> {
  const group = tab.group
  const isAlone = group.tabs.length === 1
  anew.add(uri.toString())
  try {
    await vscode.commands.executeCommand('vscode.openWith', uri, viewType, { viewColumn: vscode.ViewColumn.Beside, preview: false })
    // Tabs are told anew whenever one is opened, so it is looked for only now.
    const old = vscode.window.tabGroups.all.find(({ viewColumn }) => viewColumn === group.viewColumn)?.tabs.find((each) => gridOf(each)?.toString() === uri.toString())
    if (old) await vscode.window.tabGroups.close(old, true)
    if (!isAlone) await vscode.commands.executeCommand('moveActiveEditor', { to: 'position', by: 'group', value: group.viewColumn })
  } finally {
    anew.delete(uri.toString())
  }
}

/** The notebook that a tab shows as a grid. */
function gridOf({ input }: vscode.Tab): vscode.Uri | undefined {
  return input instanceof vscode.TabInputCustom && input.viewType === viewType ? input.uri : undefined
}
