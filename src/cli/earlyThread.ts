import { statSync } from 'node:fs'
import { Worker } from 'node:worker_threads'

/** Below so many bytes a thread takes longer to start than it saves. */
const worthAThread = 32 * 1024 * 1024

/**
 * A thread for the rows of a large log, where one is asked for: started before the program is loaded that knows what to
 * read, for either takes as long as a million rows do. It keeps nobody waiting who has no need of it.
 *
 * @param script the program itself, to be started again as a thread
 */
export function earlyThread(args: readonly string[], script: string): Worker | undefined {
  if (args[0] !== 'log' || !args.slice(1).some(isLarge)) return undefined
  const thread = new Worker(script, { workerData: { rows: true } })
  thread.unref()
  return thread
}

function isLarge(path: string): boolean {
  try {
    return statSync(path).size >= worthAThread
  } catch {
    // An option, or a file that is not there, of which the program will tell.
    return false
  }
}
