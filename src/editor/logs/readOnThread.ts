import type { Worker } from 'node:worker_threads'
import type { LogReport } from '../../core/logs/analyseLog'
import type { LogAnswer, LogTask } from '../../core/logs/thread'
import type { Catalogue } from '../../core/words/say'
import { Stopped, type LogReader } from './logReader'

/** A thread that has had nothing to do for so long is given back, ms. */
const idleMs = 30_000

type Task = LogTask extends infer Each ? (Each extends LogTask ? Omit<Each, 'id'> : never) : never
type WorkerClass = typeof Worker

interface Waiting {
  done(answer: LogAnswer): void
  failed(error: Error): void
  progress?: (bytes: number) => void
}

/**
 * Reads logs on a thread of Node's, with a program (`src/cli/threads.ts`) that ships beside the extension; `undefined`
 * where the host has no threads, as in a browser. It says what it has to say in the words of a catalogue, in English without
 * one. This is the one place of the editor that asks for Node.
 */
export async function readOnThread(program: string, words: Catalogue | undefined): Promise<LogReader | undefined> {
  try {
    const { Worker } = await import('node:worker_threads')
    return new ThreadReader(Worker, program, words)
  } catch {
    return undefined
  }
}

class ThreadReader implements LogReader {
  #thread: Worker | undefined
  #asked = 0
  #idle: ReturnType<typeof setTimeout> | undefined
  readonly #waiting = new Map<number, Waiting>()

  constructor(readonly thread: WorkerClass, readonly program: string, readonly words: Catalogue | undefined) {}

  async fingerprint({ path }: Parameters<LogReader['fingerprint']>[0], signal: AbortSignal): Promise<string> {
    return (await this.#ask({ kind: 'fingerprint', path: path! }, { signal }) as { fingerprint: string }).fingerprint
  }

  async head({ path }: Parameters<LogReader['head']>[0]): Promise<Uint8Array> {
    return (await this.#ask({ kind: 'head', path: path! }, { signal: new AbortController().signal }) as { head: Uint8Array }).head
  }

  async analyse({ path }: Parameters<LogReader['analyse']>[0], request: Parameters<LogReader['analyse']>[1], how: Parameters<LogReader['analyse']>[2]): Promise<LogReport> {
    return (await this.#ask({ kind: 'analyse', path: path!, request }, how) as { report: LogReport }).report
  }

  dispose(): void {
    this.#end(new Stopped())
  }

  #ask(task: Task, { signal, progress }: { signal: AbortSignal; progress?: (bytes: number) => void }): Promise<LogAnswer> {
    clearTimeout(this.#idle)
    const id = ++this.#asked
    return new Promise<LogAnswer>((done, failed) => {
      if (signal.aborted) return failed(new Stopped())
      // A thread is busy until its file is read: ending it is the one way to stop it.
      const stop = () => this.#end(new Stopped())
      signal.addEventListener('abort', stop, { once: true })
      const over = () => signal.removeEventListener('abort', stop)
      this.#waiting.set(id, { done: (answer) => (over(), done(answer)), failed: (error) => (over(), failed(error)), ...(progress ? { progress } : {}) })
      this.#open().postMessage({ id, ...task } satisfies LogTask)
    })
  }

  #open(): Worker {
    if (this.#thread) return this.#thread
    const thread = new this.thread(this.program, { stdout: true, stderr: true, workerData: { words: this.words } })
    thread.on('message', (answer: LogAnswer) => this.#take(answer))
    thread.on('error', (error) => this.#thread === thread && this.#end(error))
    this.#thread = thread
    return thread
  }

  #take(answer: LogAnswer): void {
    const waiting = this.#waiting.get(answer.id)
    if ('bytes' in answer) return waiting?.progress?.(answer.bytes)
    this.#waiting.delete(answer.id)
    if ('unreadable' in answer) waiting?.failed(new Error(answer.unreadable))
    else waiting?.done(answer)
    if (this.#waiting.size === 0) this.#idle = setTimeout(() => this.#end(new Stopped()), idleMs)
  }

  #end(error: Error): void {
    clearTimeout(this.#idle)
    void this.#thread?.terminate()
    this.#thread = undefined
    const waiting = [...this.#waiting.values()]
    this.#waiting.clear()
    for (const each of waiting) each.failed(error)
  }
}
