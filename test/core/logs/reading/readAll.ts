import { detectDialect, headBytes } from '../../../../src/core/logs/reading/detectDialect'
import type { Dialect } from '../../../../src/core/logs/reading/dialect'
import { readTable, type TableReader } from '../../../../src/core/logs/reading/readTable'
import { isLogProblem } from '../../../../src/core/logs/problem'

export const bytes = (text: string) => new Uint8Array(Buffer.from(text, 'utf8'))

/** The dialect of a text. @throws Error where there is none */
export function dialectOf(text: string | Uint8Array): Dialect {
  const whole = typeof text === 'string' ? bytes(text) : text
  const found = detectDialect(whole.subarray(0, headBytes), whole.length <= headBytes)
  if (isLogProblem(found)) throw new Error(JSON.stringify(found))
  return found
}

export interface ReadAll {
  dialect: Dialect
  rows: number[][]
  lines: number[]
  reader: TableReader
}

/** Every column of a text, or those that are named, fed in chunks of a size. */
export function readAll(text: string | Uint8Array, { chunk = 1 << 16, clocks = [] as number[], dialect = dialectOf(text), columns = undefined as number[] | undefined } = {}): ReadAll {
  const whole = typeof text === 'string' ? bytes(text) : text
  const [rows, lines]: [number[][], number[]] = [[], []]
  const reader = readTable(dialect, (columns ?? dialect.columns.map((_, column) => column)).map((column) => ({ column, clock: clocks.includes(column) })), (block) => {
    for (let row = 0; row < block.rows; row++) {
      rows.push(block.slots.map((slot) => slot[row]!))
      lines.push(block.lines[row]!)
    }
    return true
  })
  for (let at = 0; at < whole.length; at += chunk) reader.feed(whole.slice(at, at + chunk))
  reader.end()
  return { dialect, rows, lines, reader }
}
