import type * as vscode from 'vscode'

/** Longer than any page was seen to take on a machine that is short of time (ten seconds). */
const patienceMs = 12_000

/**
 * Calls `isBlank` where a page that is looked at has not spoken up in good time. The editor lets its pages in by a service
 * worker, which at times never comes to be where one page closes as the next opens: that page stays blank for good, and only
 * another one in its place helps. One that is not looked at is given time until it is.
 */
export function watchForBlank(panel: vscode.WebviewPanel, hasSpoken: () => boolean, isBlank: () => void): void {
  let timer: ReturnType<typeof setTimeout> | undefined
  const end = () => clearTimeout(timer)
  const look = () => {
    end()
    if (panel.active && !hasSpoken()) timer = setTimeout(() => panel.active && !hasSpoken() && isBlank(), patienceMs)
  }
  look()
  panel.onDidChangeViewState(look)
  panel.onDidDispose(end)
}
