import { availableParallelism } from 'node:os'
import { parentPort, Worker, workerData } from 'node:worker_threads'
import type { CheckedFile } from './checkedFile'
import { checkPath } from './checkPath'
import { files, sizeOf } from './files'
import { isUsageError, UsageError, type World } from './outcome'

interface ChecksTask {
  paths: readonly string[]
  logs: boolean
  /** The place of the next file that nobody has taken. */
  next: Int32Array
}

/** What a thread came to: a file by its place, or why it could not be read. */
type FromThread = { at: number; file: CheckedFile } | { at: number; unreadable: string }

/** Below so many bytes in all a thread takes longer to start than it saves. */
const worthMoreThreads = 512 * 1024

/** `checkOnThreads` where there is enough to check and more than one core. */
export const checks: NonNullable<World['checks']> = (script, paths, logs) => {
  const isWorthIt = paths.length > 1 && !paths.includes('-') && availableParallelism() > 1 && paths.reduce((sum, path) => sum + sizeOf(path), 0) >= worthMoreThreads
  return isWorthIt ? checkOnThreads(script, paths, logs, files) : undefined
}

/**
 * Checks files on this thread and as many more as there are cores, each taking the next file when it is done with one.
 * `script` is the program that calls `serveChecks` when it is started as a thread.
 *
 * @throws UsageError where a file cannot be read: the first of them, as if they were read in turn
 */
export async function checkOnThreads(script: string, paths: readonly string[], logs: boolean, world: World): Promise<CheckedFile[]> {
  const task: ChecksTask = { paths, logs, next: new Int32Array(new SharedArrayBuffer(4)) }
  const checked: CheckedFile[] = []
  const unreadable: { at: number; why: string }[] = []
  const take = (message: FromThread) => {
    if ('file' in message) checked[message.at] = message.file
    else unreadable.push({ at: message.at, why: message.unreadable })
  }
  const more = Math.min(availableParallelism(), paths.length) - 1
  const threads = Array.from({ length: more }, () => new Promise<void>((resolve, reject) => {
    const thread = new Worker(script, { workerData: { checks: task } })
    thread.on('message', take)
    thread.on('error', reject)
    thread.on('exit', () => resolve())
  }))
  await Promise.all([checkFrom(task, world, take), ...threads])
  const first = unreadable.sort((a, b) => a.at - b.at)[0]
  if (first) throw new UsageError(first.why)
  return checked
}

/** The thread's part. */
export async function serveChecks(world: World): Promise<void> {
  const task = (workerData as { checks?: ChecksTask } | null)?.checks
  if (parentPort && task) await checkFrom(task, world, (message) => parentPort!.postMessage(message))
}

async function checkFrom({ paths, logs, next }: ChecksTask, world: World, tell: (message: FromThread) => void): Promise<void> {
  for (let at = Atomics.add(next, 0, 1); at < paths.length; at = Atomics.add(next, 0, 1)) {
    try {
      tell({ at, file: await checkPath(paths[at]!, logs, world) })
    } catch (error) {
      if (!isUsageError(error)) throw error
      tell({ at, unreadable: error.message })
    }
  }
}
