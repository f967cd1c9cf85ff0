import { parentPort, Worker, type MessagePort } from 'node:worker_threads'
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

/** Blocks one behind the other in one of the drawers, with their rows and whether any is missing. */
interface Batch {
  drawer: number
  rows: number[]
  holes: boolean[]
}

type FromThread = { batch: Batch } | { end: RowsEnd } | { unreadable: string }

/** So many blocks to a drawer, and so many drawers: memory stays where it is, however long the file. */
const blocksTogether = 16
const drawerCount = 4

/** Memory that both threads see: handing numbers over costs nothing then, where messages would be made and swept up again. */
interface Chest {
  memory: SharedArrayBuffer
  /** How many drawers have been emptied so far, for the thread to wait on. */
  emptied: SharedArrayBuffer
}

/** The drawers' columns: those that are wanted, and the lines last. A drawer belongs to one thread at a time. */
function drawersOf({ memory }: Chest): Float64Array[][] {
  const rows = blockRows * blocksTogether
  const columns = memory.byteLength / 8 / rows / drawerCount
  return Array.from({ length: drawerCount }, (_, drawer) => Array.from({ length: columns }, (_, at) => new Float64Array(memory, (drawer * columns + at) * rows * 8, rows)))
}

function newChest(columns: number): Chest {
  return { memory: new SharedArrayBuffer(drawerCount * columns * blockRows * blocksTogether * 8), emptied: new SharedArrayBuffer(4) }
}

/** What a thread is handed with its task. */
interface Begin {
  task: RowsTask
  chest: Chest
}

/** A thread for the rows of a file, started before it is known what is to be read: that takes as long as a million rows do. */
export interface RowsThread {
  /** Ends with nothing where `take` wants no more. @throws UsageError where the file cannot be read */
  read: (task: RowsTask, take: (block: RowBlock) => boolean) => Promise<RowsEnd | undefined>
  /** Ends the thread, read or not. */
  stop: () => Promise<unknown>
}

/**
 * Reads the rows of a file on a thread of its own, while this one works on those before: numbers from text are half of
 * all the work. `script` is the program that calls `serveRows` when it is started as a thread.
 */
export function startRows(script: string): RowsThread {
  const thread = new Worker(script, { workerData: { rows: true } })
  // It may fail before anyone listens; whoever reads is told then.
  const failed = new Promise<never>((_, reject) => thread.on('error', reject))
  failed.catch(() => undefined)
  const read: RowsThread['read'] = (task, take) => Promise.race([failed, new Promise<RowsEnd | undefined>((resolve, reject) => {
    const chest = newChest(task.wanted.length + 1)
    const [drawers, emptied] = [drawersOf(chest), new Int32Array(chest.emptied)]
    let enough = false
    thread.on('message', (message: FromThread) => {
      if (enough) return
      if ('end' in message) resolve(message.end)
      else if ('unreadable' in message) reject(new UsageError(message.unreadable))
      else if (takeAll(message.batch, drawers, take)) {
        Atomics.add(emptied, 0, 1)
        Atomics.notify(emptied, 0)
      } else {
        enough = true
        resolve(undefined)
      }
    })
    thread.postMessage({ task, chest } satisfies Begin)
  })])
  return { read, stop: () => thread.terminate() }
}

function takeAll({ drawer, rows, holes }: Batch, drawers: readonly Float64Array[][], take: (block: RowBlock) => boolean): boolean {
  return rows.every((count, at) => {
    const [from, to] = [at * blockRows, (at + 1) * blockRows]
    const slots = drawers[drawer]!.map((column) => column.subarray(from, to))
    return take({ rows: count, slots: slots.slice(0, -1), lines: slots.at(-1)!, holes: holes[at]! })
  })
}

/** The thread's part: waits for its task, reads what it is given and lays it out, a few drawers ahead of whoever takes them. */
export function serveRows(): void {
  const port = parentPort
  port?.once('message', (begin: Begin) => void layOut(begin, port))
}

async function layOut({ task, chest }: Begin, port: MessagePort): Promise<void> {
  const outbox = new Outbox(port, chest)
  const reader = readTable(task.dialect, task.wanted, (block) => outbox.put(block))
  try {
    for await (const chunk of streamFile(task.path)) {
      reader.feed(chunk)
      if (reader.problem()) break
    }
  } catch (error) {
    port.postMessage({ unreadable: (error as Error).message } satisfies FromThread)
    return
  }
  reader.end()
  outbox.send()
  const problem = reader.problem()
  port.postMessage({ end: { tally: reader.tally, ...(problem ? { problem } : {}) } } satisfies FromThread)
}

/** Lays blocks into the drawers in turn, and waits where none has been emptied yet. */
class Outbox {
  readonly #drawers: readonly Float64Array[][]
  readonly #emptied: Int32Array
  #sent = 0
  #batch: Batch | undefined

  constructor(readonly port: MessagePort, chest: Chest) {
    this.#drawers = drawersOf(chest)
    this.#emptied = new Int32Array(chest.emptied)
  }

  put({ rows, slots, lines, holes }: RowBlock): void {
    const batch = this.#batch ??= { drawer: this.#nextDrawer(), rows: [], holes: [] }
    const columns = this.#drawers[batch.drawer]!
    const from = batch.rows.length * blockRows
    slots.forEach((slot, at) => columns[at]!.set(rows === blockRows ? slot : slot.subarray(0, rows), from))
    columns.at(-1)!.set(rows === blockRows ? lines : lines.subarray(0, rows), from)
    batch.rows.push(rows)
    batch.holes.push(holes)
    if (batch.rows.length === blocksTogether) this.send()
  }

  #nextDrawer(): number {
    for (let emptied = Atomics.load(this.#emptied, 0); this.#sent - emptied >= drawerCount; emptied = Atomics.load(this.#emptied, 0)) {
      Atomics.wait(this.#emptied, 0, emptied)
    }
    return this.#sent % drawerCount
  }

  send(): void {
    if (!this.#batch) return
    this.port.postMessage({ batch: this.#batch } satisfies FromThread)
    this.#batch = undefined
    this.#sent++
  }
}
