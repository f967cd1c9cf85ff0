import { parentPort, Worker, workerData, type MessagePort } from 'node:worker_threads'
import type { LogProblem } from '../core/logs/problem'
import type { Dialect } from '../core/logs/reading/dialect'
import { blockRows, readTable, type RowBlock, type Wanted } from '../core/logs/reading/readTable'
import type { Tally } from '../core/logs/reading/tally'
import { UsageError } from './outcome'
import { streamFile } from './streamFile'

/** What there is to read, and how. */
export interface RowsTask {
  path: string
  dialect: Dialect
  wanted: readonly Wanted[]
}

/** How a reading ended. */
export interface RowsEnd {
  tally: Tally
  problem?: LogProblem
}

/** Blocks one behind the other, slot by slot, with the lines they stand in. */
interface Batch {
  rows: number[]
  holes: boolean[]
  /** The wanted columns, and the lines last. */
  columns: Float64Array[]
}

type FromThread = { batch: Batch } | { end: RowsEnd } | { unreadable: string }

/** So many blocks to a message, and so many messages on their way: memory stays where it is, however long the file. */
const blocksTogether = 16
const messagesUnderWay = 4

/**
 * Reads the rows of a file on a thread of its own, while this one works on those before: numbers from text are half of
 * all the work. `script` is the program that calls `serveRows` when it is started as a thread.
 *
 * @throws UsageError where the file cannot be read
 */
export function rowsFromThread(script: string, task: RowsTask, take: (block: RowBlock) => boolean): Promise<RowsEnd | undefined> {
  return new Promise((resolve, reject) => {
    const thread = new Worker(script, { workerData: { rows: task } })
    const finish = (end: RowsEnd | undefined) => void thread.terminate().then(() => resolve(end))
    thread.on('error', reject)
    thread.on('message', (message: FromThread) => {
      if ('end' in message) finish(message.end)
      else if ('unreadable' in message) void thread.terminate().then(() => reject(new UsageError(message.unreadable)))
      else if (takeAll(message.batch, take)) thread.postMessage(message.batch.columns, message.batch.columns.map(({ buffer }) => buffer as ArrayBuffer))
      else finish(undefined)
    })
  })
}

function takeAll({ rows, holes, columns }: Batch, take: (block: RowBlock) => boolean): boolean {
  return rows.every((count, at) => {
    const [from, to] = [at * blockRows, (at + 1) * blockRows]
    const slots = columns.map((column) => column.subarray(from, to))
    return take({ rows: count, slots: slots.slice(0, -1), lines: slots.at(-1)!, holes: holes[at]! })
  })
}

/** The thread's part: reads what it was given and sends it, a few messages ahead of whoever takes them. */
export async function serveRows(): Promise<void> {
  const task = (workerData as { rows?: RowsTask } | null)?.rows
  if (!parentPort || !task) return
  const outbox = new Outbox(parentPort, task.wanted.length + 1)
  const reader = readTable(task.dialect, task.wanted, (block) => outbox.put(block))
  try {
    for await (const chunk of streamFile(task.path)) {
      reader.feed(chunk)
      if (reader.problem()) break
      await outbox.room()
    }
  } catch (error) {
    parentPort.postMessage({ unreadable: (error as Error).message } satisfies FromThread)
    return
  }
  reader.end()
  outbox.send()
  const problem = reader.problem()
  parentPort.postMessage({ end: { tally: reader.tally, ...(problem ? { problem } : {}) } } satisfies FromThread)
}

/** Gathers blocks into messages whose arrays come back to be used again. */
class Outbox {
  #underWay = 0
  #back: Float64Array[][] = []
  #batch: Batch | undefined
  #wake: (() => void) | undefined

  constructor(readonly port: MessagePort, readonly columns: number) {
    port.on('message', (back: Float64Array[]) => {
      this.#underWay--
      this.#back.push(back)
      this.#wake?.()
    })
  }

  put({ rows, slots, lines, holes }: RowBlock): void {
    const batch = this.#batch ??= { rows: [], holes: [], columns: this.#back.pop() ?? Array.from({ length: this.columns }, () => new Float64Array(blockRows * blocksTogether)) }
    const from = batch.rows.length * blockRows
    slots.forEach((slot, at) => batch.columns[at]!.set(rows === blockRows ? slot : slot.subarray(0, rows), from))
    batch.columns.at(-1)!.set(rows === blockRows ? lines : lines.subarray(0, rows), from)
    batch.rows.push(rows)
    batch.holes.push(holes)
    if (batch.rows.length === blocksTogether) this.send()
  }

  send(): void {
    if (!this.#batch) return
    this.port.postMessage({ batch: this.#batch } satisfies FromThread, this.#batch.columns.map(({ buffer }) => buffer as ArrayBuffer))
    this.#batch = undefined
    this.#underWay++
  }

  /** Waits until few enough messages are under way. */
  async room(): Promise<void> {
    while (this.#underWay >= messagesUnderWay) {
      await new Promise<void>((resolve) => this.#wake = resolve)
    }
  }
}
