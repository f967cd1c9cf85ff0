import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { parentPort } from 'node:worker_threads'
import { analyseLog, type LogRequest } from '../core/logs/analyseLog'
import type { LogAnswer, LogTask } from '../core/logs/thread'
import { headOf } from '../core/logs/reading/headOf'
import { streamFile } from './streamFile'
import { why } from './why'

/** How often it tells how far it is, ms. */
const tellMs = 200

/**
 * Serves whoever started this program as a thread to read logs with, as the editor does. Tasks are done in their order.
 */
export function serveLogs(): void {
  let last: Promise<void> = Promise.resolve()
  const port = parentPort!
  port.on('message', (task: LogTask) => {
    last = last.then(async () => {
      const answer: LogAnswer = await answerTo(task, (bytes) => port.postMessage({ id: task.id, bytes } satisfies LogAnswer))
      port.postMessage(answer)
    })
  })
}

async function answerTo(task: LogTask, tell: (bytes: number) => void): Promise<LogAnswer> {
  const { id, path } = task
  try {
    switch (task.kind) {
      case 'fingerprint': return { id, fingerprint: await fingerprintOf(path) }
      case 'head': return { id, head: await headOf(streamFile(path)) }
      case 'analyse': return { id, report: await analyse(path, task.request, tell) }
    }
  } catch (error) {
    return { id, unreadable: error instanceof Error && 'code' in error ? why(error) : (error as Error).message.replace(`${path}: `, '') }
  }
}

/** One and the same for two files of the same content, and for those alone. */
async function fingerprintOf(path: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path)) hash.update(chunk as Uint8Array)
  return hash.digest('hex')
}

async function analyse(path: string, request: LogRequest, tell: (bytes: number) => void) {
  const analysis = analyseLog(request)
  let [bytes, told] = [0, Date.now()]
  for await (const chunk of streamFile(path)) {
    bytes += chunk.length
    if (!analysis.feed(chunk)) break
    if (Date.now() - told > tellMs) {
      told = Date.now()
      tell(bytes)
    }
  }
  return analysis.end()
}
