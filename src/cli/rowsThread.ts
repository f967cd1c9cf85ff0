import { parentPort, type MessagePort, type Worker } from 'node:worker_threads'
import { blockRows } from '../core/logs/reading/readTable'
import { readRows, type RowsEnd, type RowsTask } from '../core/logs/readRows'
import type { PipeStart, RowSink } from '../core/logs/rowPipe'
import type { TakeRows } from '../core/logs/series/rows'
import { UsageError } from './outcome'
import { streamFile } from './streamFile'

/** Blocks one behind the other in one of the drawers, with their rows and whether any is missing. */
interface Batch {
  drawer: number
  rows: number[]
  holes: boolean[]
}

type FromThread = { start: PipeStart } | { batch: Batch } | { end: RowsEnd } | { unreadable: string }

/** So many blocks to a drawer, and so many drawers: memory stays where it is, however long the file. */
const blocksTogether = 16
const drawerCount = 4

/** Memory that both threads see: handing numbers over costs nothing then, where messages would be made and swept up again. */
interface Chest {
  memory: SharedArrayBuffer
  /** How many drawers have been emptied so far, for the thread to wait on. */
  emptied: SharedArrayBuffer
}

/** The drawers' columns: the times, then the channels. A drawer belongs to one thread at a time. */
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
  path: string
  task: RowsTask
  chest: Chest
}

/** A thread for the rows of a file, which waits to be told what is to be read. */
export interface RowsThread {
  /** As `readRows` does. @throws UsageError where the file cannot be read */
  read: (path: string, task: RowsTask, sink: RowSink) => Promise<RowsEnd>
  /** Ends the thread, read or not. */
  stop: () => Promise<unknown>
}

/**
 * Reads the rows of a file on a thread of its own, while this one works on those before: numbers from text are half of
 * all the work. `thread` is one that called `serveRows` when it was started.
 */
export function rowsFrom(thread: Worker): RowsThread {
  // It may fail before anyone listens; whoever reads is told then.
  const failed = new Promise<never>((_, reject) => thread.on('error', reject))
  failed.catch(() => undefined)
  const read: RowsThread['read'] = (path, task, sink) => Promise.race([failed, new Promise<RowsEnd>((resolve, reject) => {
    const chest = newChest(1 + channelsOf(task))
    const [drawers, emptied] = [drawersOf(chest), new Int32Array(chest.emptied)]
    thread.on('message', (message: FromThread) => {
      if ('end' in message) resolve(message.end)
      else if ('unreadable' in message) reject(new UsageError(message.unreadable))
      else if ('start' in message) sink.begin(message.start)
      else {
        takeAll(message.batch, drawers[message.batch.drawer]!, sink)
        Atomics.add(emptied, 0, 1)
        Atomics.notify(emptied, 0)
      }
    })
    thread.ref()
    thread.postMessage({ path, task, chest } satisfies Begin)
  })])
  return { read, stop: () => thread.terminate() }
}

/** Positions, and what is held between samples. */
function channelsOf({ resolved: { ends, brake, lap } }: RowsTask): number {
  return [ends.front, ends.rear, brake, lap].filter((channel) => channel !== undefined).length
}

function takeAll({ rows, holes }: Batch, drawer: readonly Float64Array[], sink: RowSink): void {
  rows.forEach((count, at) => {
    const [times, ...channels] = drawer.map((column) => column.subarray(at * blockRows, (at + 1) * blockRows))
    sink.take(times!, channels, count, holes[at]!)
  })
}

/** The thread's part: waits for its task, reads what it is given and lays it out, a few drawers ahead of whoever takes them. */
export function serveRows(): void {
  const port = parentPort
  port?.once('message', (begin: Begin) => void layOut(begin, port))
}

async function layOut({ path, task, chest }: Begin, port: MessagePort): Promise<void> {
  const outbox = new Outbox(port, chest)
  const reader = readRows(task, outbox)
  try {
    for await (const chunk of streamFile(path)) if (!reader.feed(chunk)) break
  } catch (error) {
    port.postMessage({ unreadable: (error as Error).message } satisfies FromThread)
    return
  }
  const end = reader.end()
  outbox.send()
  port.postMessage({ end } satisfies FromThread)
}

/** Lays blocks into the drawers in turn, and waits where none has been emptied yet. */
class Outbox implements RowSink {
  readonly #drawers: readonly Float64Array[][]
  readonly #emptied: Int32Array
  #sent = 0
  #batch: Batch | undefined

  constructor(readonly port: MessagePort, chest: Chest) {
    this.#drawers = drawersOf(chest)
    this.#emptied = new Int32Array(chest.emptied)
  }

  readonly begin = (start: PipeStart): void => this.port.postMessage({ start } satisfies FromThread)

  readonly take: TakeRows = (times, channels, rows, holes) => {
    const batch = this.#batch ??= { drawer: this.#nextDrawer(), rows: [], holes: [] }
    const drawer = this.#drawers[batch.drawer]!
    const from = batch.rows.length * blockRows
    const lay = (column: Float64Array, values: Float64Array) => column.set(rows === values.length ? values : values.subarray(0, rows), from)
    lay(drawer[0]!, times)
    channels.forEach((values, at) => lay(drawer[at + 1]!, values))
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
