import * as vscode from 'vscode'
import { say } from '../../core/words/say'

/** A log that is read sooner is not worth a message, ms. */
const patienceMs = 1000

/**
 * Runs the reading of a log, and shows how far it is where that takes its time; there it can be cancelled. `wasStopped`
 * tells whether a person did.
 */
export async function showProgress<Value>({ name, size, stop }: { name: string; size: number; stop: AbortController }, read: (progress: (bytes: number) => void, wasStopped: () => boolean) => Promise<Value>): Promise<Value> {
  let [told, stopped] = [0, false]
  let report: ((percent: number) => void) | undefined
  const reading = read((bytes) => {
    // Packed files hold more than their size: they stay short of the end until it is there.
    const percent = Math.min(99, (100 * bytes) / Math.max(1, size))
    report?.(percent - told)
    if (report) told = Math.max(told, percent)
  }, () => stopped)
  const timer = setTimeout(() => void vscode.window.withProgress({ location: vscode.ProgressLocation.Notification, title: say`Reading the log ${name}`, cancellable: true }, (progress, token) => {
    report = (percent) => percent > 0 && progress.report({ increment: percent })
    token.onCancellationRequested(() => {
      stopped = true
      stop.abort()
    })
    return reading.then(() => undefined, () => undefined)
  }), patienceMs)
  try {
    return await reading
  } finally {
    clearTimeout(timer)
  }
}
