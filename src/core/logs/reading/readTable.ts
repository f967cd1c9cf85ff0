import { say } from '../../words/say'
import type { LogProblem } from '../problem'
import { byteOf, carriageReturn, hash, lineFeed } from './bytes'
import type { Dialect } from './dialect'
import { fieldScanner } from './fieldScanner'
import { notPlain, plainNumbers } from './plainNumbers'
import { plainRows } from './plainRows'
import { countOne, emptyTally, type Tally } from './tally'
import { longestLine, wholeLines } from './wholeLines'

/** A column that is wanted: its place in the table, from 0, and whether it holds times of day. */
export interface Wanted {
  column: number
  clock?: boolean
}

/** Some rows of the wanted columns, in the order they were wanted. The arrays are used again for the next rows. */
export interface RowBlock {
  rows: number
  slots: readonly Float64Array[]
  /** The line of the file each row stands in, from 1. */
  lines: Float64Array
  /** Whether any of the numbers is missing. */
  holes: boolean
}

export interface TableReader {
  /** Takes the next bytes of the file, from its first byte on. */
  feed: (chunk: Uint8Array) => void
  end: () => void
  tally: Tally
  /** Set where the rest is not worth reading; nothing is emitted from then on. */
  problem: () => LogProblem | undefined
}

/** Rows in a block: its columns stay in the processor's first caches. */
export const blockRows = 2048

/** So many lines may be of another width before the whole is doubted, and this share of them. */
const raggedAllowed = { lines: 20, share: 0.05 }

/**
 * Reads a table from bytes as they come, into blocks of numbers; memory does not grow with the file. What is no number is
 * NaN and counted. A line with another number of fields is left out and counted; too many of them end the reading. So does
 * `emit`, where it returns false: what is behind those rows is not looked at then, however the bytes came.
 */
export function readTable(dialect: Dialect, wanted: readonly Wanted[], emit: (block: RowBlock) => boolean): TableReader {
  const tally = emptyTally(wanted.length)
  const scanner = rowScanner(dialect, wanted, tally, emit)
  const lines = wholeLines(scanner.scan, dialect.quoted)
  let skip = dialect.dataOffset
  let tooLong: LogProblem | undefined
  return {
    tally,
    feed(chunk) {
      if (tooLong || scanner.ended()) return
      const from = Math.min(skip, chunk.length)
      skip -= from
      if (from < chunk.length && !lines.feed(from === 0 ? chunk : chunk.subarray(from)) && !scanner.ended()) tooLong = endless(scanner.line(), dialect)
    },
    end() {
      if (!scanner.ended()) tally.cutLastLine = lines.rest().some((byte) => byte > 32)
      scanner.flush()
    },
    problem: () => tooLong ?? scanner.problem(),
  }
}

function endless(line: number, { quoted }: Dialect): LogProblem {
  return { line, message: quoted ? say`this line is longer than ${longestLine >> 20} MB; a quote is opened and never closed, or it is no line of a log` : say`this line is longer than ${longestLine >> 20} MB: it is no line of a log` }
}

/** Reads whole lines into blocks. */
function rowScanner(dialect: Dialect, wanted: readonly Wanted[], tally: Tally, emit: (block: RowBlock) => boolean) {
  const reader = rowReader(dialect, wanted, tally)
  const { slots, quick } = reader
  const lines = new Float64Array(blockRows)
  let [row, line] = [0, dialect.dataLine]
  let problem: LogProblem | undefined
  let enough = false

  function flush(): void {
    tally.rows += row
    const block = { rows: row, slots, lines, holes: reader.takeHoles() }
    row = 0
    if (block.rows > 0 && !problem) enough = !emit(block)
  }

  /** As many rows as are plain, as far as there is room; returns where they end. */
  function scanPlain(at: number): number {
    const behind = quick?.read(at, row) ?? at
    if (behind > at) for (const last = quick!.count(); row < last; row++) lines[row] = line++
    return behind
  }

  function scanRow(bytes: Uint8Array, begin: number): number {
    const { end, columns } = reader.read(bytes, begin, row, line)
    if (columns === dialect.columns.length) lines[row++] = line
    else ragged(columns)
    return end
  }

  function ragged(found: number): void {
    countOne(tally.ragged, line)
    if (tally.ragged.times > raggedAllowed.lines && tally.ragged.times > raggedAllowed.share * (tally.rows + row)) {
      problem = { line, message: say`${found} fields, and there are ${dialect.columns.length} columns; ${tally.ragged.times} lines are so, the first is line ${tally.ragged.firstLine ?? line}` }
    }
  }

  /** A row that is not plain, or a line that is none. */
  function scanLine(bytes: Uint8Array, begin: number): number {
    const first = bytes[begin]!
    const isNone = first === hash || first === lineFeed || first === carriageReturn
    if (isNone) tally.remarks++
    const end = isNone ? bytes.indexOf(lineFeed, begin) + 1 : scanRow(bytes, begin)
    line += dialect.quoted ? lineEnds(bytes, begin, end) : 1
    return end
  }

  function scan(chunk: Uint8Array, from: number, to: number): void {
    // What is behind the last whole line is not to be read by a field whose quote is never closed.
    const bytes = to === chunk.length ? chunk : chunk.subarray(0, to)
    quick?.begin(bytes, to)
    for (let at = from; at < to && !problem && !enough;) {
      at = scanPlain(at)
      if (at < to && row < blockRows) at = scanLine(bytes, at)
      if (row === blockRows) flush()
    }
  }

  return { scan, flush, problem: () => problem, ended: () => enough || problem !== undefined, line: () => line }
}

/** Reads single rows field by field, and gives the quick way through plain ones, into the same slots. */
function rowReader(dialect: Dialect, wanted: readonly Wanted[], tally: Tally) {
  const width = dialect.columns.length
  const slotOf = Int32Array.from({ length: width }, (_, column) => wanted.findIndex((each) => each.column === column))
  const fields = fieldScanner(dialect, wanted.map(({ clock }) => clock === true), tally)
  const marks = { separator: byteOf(dialect.separator), decimal: byteOf(dialect.decimal) }
  const readPlain = plainNumbers(marks)
  const quick = plainRows({ slotOf, slots: wanted.length, rows: blockRows }, marks)
  const slots = quick?.slots ?? wanted.map(() => new Float64Array(blockRows))
  let holes = false

  /** A row, from its first byte: the place behind its line end, and how many columns it has. */
  function read(bytes: Uint8Array, begin: number, row: number, line: number): { end: number; columns: number } {
    let at = begin
    let column = 0
    let last = at
    do {
      last = at
      const slot = column < width ? slotOf[column]! : -1
      if (slot < 0) at = fields.skip(bytes, at)
      else {
        const into = slots[slot]!
        const end = readPlain(bytes, at, into, row)
        if (end === notPlain) {
          at = fields.readSlowly(bytes, at, { into, row, slot, line })
          if (Number.isNaN(into[row]!)) holes = true
        } else at = end
      }
      column++
    } while (bytes[at++] !== lineFeed)
    // A separator at the very end of the line opens no column.
    return { end: at, columns: column === width + 1 && isBlank(bytes, last, at) ? width : column }
  }

  /** Whether any number was missing since this was last asked. */
  function takeHoles(): boolean {
    const had = holes
    holes = false
    return had
  }

  return { slots, quick, read, takeHoles }
}

/** How many lines a row takes: more than one where a line end stands inside quotes. */
function lineEnds(bytes: Uint8Array, from: number, to: number): number {
  let ends = 0
  for (let at = from; at < to; at++) if (bytes[at] === lineFeed) ends++
  return ends
}

function isBlank(bytes: Uint8Array, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (bytes[at]! > 32) return false
  return true
}
