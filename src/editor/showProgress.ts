import * as vscode from 'vscode'

/** What is done sooner is not worth a message, ms. */
const patienceMs = 1000

/**
 * Runs what may take long, and shows how far it is, in percent, where it does; there it can be cancelled. `wasStopped`
 * tells whether a person did.
 */
export async function showProgress<Value>({ title, stop, afterMs = patienceMs }: { title: string; stop: AbortController; afterMs?: number }, run: (progress: (percent: number) => void, wasStopped: () => boolean) => Promise<Value>): Promise<Value> {
  let [told, stopped] = [0, false]
  let report: ((percent: number) => void) | undefined
  const running = run((percent) => {
    report?.(percent - told)
    if (report) told = Math.max(told, percent)
  }, () => stopped)
  const timer = setTimeout(() => void vscode.window.withProgress({ location: vscode.ProgressLocation.Notification, title, cancellable: true }, (progress, token) => {
    report = (percent) => percent > 0 && progress.report({ increment: percent })
    token.onCancellationRequested(() => {
      stopped = true
      stop.abort()
    })
    return running.then(() => undefined, () => undefined)
  }), afterMs)
  try {
    return await running
  } finally {
    clearTimeout(timer)
  }
}
