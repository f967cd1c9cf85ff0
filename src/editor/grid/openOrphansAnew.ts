import * as vscode from 'vscode'
import { gridOf, openAnew } from './openAnew'
import type { Sessions } from './sessions'

/** A grid that is shown is given to us at once; one that is not after this long has another host, which is gone. */
const patienceMs = 2000

/**
 * Opens grids anew whose extension host ended under them. The editor starts another host and leaves their tabs as they were:
 * they look alive, and nothing that is typed arrives. The notebook itself is the editor's own and lost nothing; what was typed
 * and not written the page kept.
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
