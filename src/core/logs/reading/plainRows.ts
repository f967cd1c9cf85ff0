import program from './generated/plainRows.cjs'
import { powers, type Marks } from './plainNumbers'

/** Which columns go where: for each column of the table the slot it is read into, or -1. */
export interface RowLayout {
  slotOf: Int32Array
  slots: number
  /** Rows in a slot. */
  rows: number
}

/** Reads rows of plain numbers, many at once. */
export interface PlainRows {
  /** What is read into, one for each column that is wanted. */
  slots: readonly Float64Array[]
  /** Begins with other bytes, up to `end`. */
  begin: (bytes: Uint8Array, end: number) => void
  /**
   * Reads the rows from `at` on, the first of them into `row`, until the slots are full or one is not plain; returns where
   * the first row begins that was not read. How many are there then tells `count`.
   */
  read: (at: number, row: number) => number
  count: () => number
}

/** What of WebAssembly is used here; every host has it, and one that lets no program be compiled does without. */
interface Wasm {
  Memory: new (size: { initial: number; maximum: number }) => { buffer: ArrayBuffer }
  Module: new (program: Uint8Array) => unknown
  Instance: new (module: unknown, imports: { env: { memory: unknown } }) => { exports: unknown }
}

interface Program {
  rows: { value: number }
  setUp: (columns: number, betweenFields: number, insideNumbers: number) => void
  readRows: (at: number, row: number, most: number) => number
}

/** The bytes are read in pieces of this, which stay in the processor's caches. */
const pieceBytes = 1 << 16
const [columnsAt, pageBytes] = [128, 1 << 16]
/** A table of more columns is none that this was made for. */
const mostColumns = 10_000
/** So many rows at the most are left to others before it is tried again. */
const longestPause = 1023

/**
 * The quick way through rows that are nothing but plain numbers, in WebAssembly: half the time of the way through single
 * fields, which reads all others, and to the last bit the same numbers. `undefined` where there is no such way.
 */
export function plainRows({ slotOf, slots, rows }: RowLayout, { separator, decimal }: Marks): PlainRows | undefined {
  const width = slotOf.length
  if (width > mostColumns) return undefined
  const slotsAt = columnsAt + 8 * Math.ceil(width / 2)
  const piecesAt = slotsAt + slots * rows * 8
  const started = startProgram(piecesAt + pieceBytes + 1)
  if (!started) return undefined
  const { memory, run } = started
  run.setUp(width, separator, decimal)
  new Float64Array(memory, 0, powers.length).set(powers)
  new Uint32Array(memory, columnsAt, width).set(slotOf.map((slot) => (slot < 0 ? 0 : slotsAt + slot * rows * 8)))
  const pieces = new Uint8Array(memory, piecesAt, pieceBytes + 1)
  let bytes: Uint8Array = pieces
  // The stretch of the bytes that lies in the program's memory.
  let [end, from, to] = [0, 0, 0]
  let [pause, longer] = [0, 0]

  function lay(at: number): void {
    from = at
    to = Math.min(end, at + pieceBytes)
    pieces.set(bytes.subarray(from, to))
    pieces[to - from] = 0
  }

  return {
    slots: Array.from({ length: slots }, (_, slot) => new Float64Array(memory, slotsAt + slot * rows * 8, rows)),
    begin(next, behind) {
      bytes = next
      end = behind
      from = to = 0
    },
    read(at, row) {
      if (pause > 0) {
        pause--
        return at
      }
      if (at < from || at >= to) lay(at)
      const next = run.readRows(piecesAt + at - from, row, rows) - piecesAt + from
      // The rows of some tables are never plain, and each attempt costs.
      if (next === at) [pause, longer] = [longer, Math.min(longestPause, 2 * longer + 1)]
      else longer = 0
      return next
    },
    count: () => run.rows.value,
  }
}

let compiled: unknown

function startProgram(bytes: number): { memory: ArrayBuffer; run: Program } | undefined {
  const wasm = (globalThis as { WebAssembly?: Wasm }).WebAssembly
  if (!wasm) return undefined
  try {
    const pages = Math.ceil(bytes / pageBytes)
    const memory = new wasm.Memory({ initial: pages, maximum: pages })
    compiled ??= new wasm.Module(program)
    return { memory: memory.buffer, run: new wasm.Instance(compiled, { env: { memory } }).exports as Program }
  } catch {
    // A host's policy may forbid to compile a program.
    return undefined
  }
}
