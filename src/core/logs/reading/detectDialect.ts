import { say } from '../../words/say'
import type { LogProblem } from '../problem'
import { clockSeconds } from './clock'
import type { Dialect } from './dialect'
import { meansMissing, numberFrom } from './fieldText'
import { findHeadings } from './findHeadings'
import { hash } from './bytes'
import { headLines, type HeadLine } from './headLines'
import { notText } from './notText'
import { parquetMark, parquetUnread } from './parquet/isParquet'
import { findShape, type Shape } from './findShape'

/** As much of a file as is looked at to know how it is written. */
export const headBytes = 65_536

/**
 * How a table is written, from its first 64 kB: separator, decimal mark, quotes, headings, units and where its numbers
 * begin. Lines before the headings are passed over. `whole` says that there is no more of the file.
 *
 * Or what is wrong with it: not text, no columns, no numbers, a comma both between and inside numbers.
 */
export function detectDialect(head: Uint8Array, whole: boolean): Dialect | LogProblem {
  const binary = notText(head)
  if (binary) return { message: binary }
  const lines = headLines(head, whole)
  if (lines.length === 0) return { line: 1, message: say('the first line is longer than 64 kB; this is no table of a logger, or one of far too many columns') }
  const content = lines.filter(({ text }) => text.trim() !== '' && text.trim().charCodeAt(0) !== hash)
  const shape = findShape(content)
  if (!shape) return noTable(content)
  const start = firstData(content, shape)
  if (start < 0) return { message: say('no line holds numbers in every column that should have them') }
  const headings = findHeadings(lines, content, start, shape)
  if ('message' in headings) return headings
  const { number: dataLine, start: dataOffset } = content[start]!
  return { separator: shape.separator, decimal: shape.decimal, quoted: shape.quoted, ...parquetFacts(lines), ...headings, dataLine, dataOffset }
}

function parquetFacts([mark, next]: readonly HeadLine[]): Pick<Dialect, 'parquet' | 'unread'> {
  if (mark?.text !== parquetMark) return {}
  return { parquet: true, ...(next?.text.startsWith(parquetUnread) ? { unread: next.text.slice(parquetUnread.length).split('\t') } : {}) }
}

function noTable(content: readonly HeadLine[]): LogProblem {
  const numbers = content.filter(({ text }) => numberFrom(text.trim(), '.') !== undefined || numberFrom(text.trim(), ',') !== undefined)
  if (content.length === 0) return { message: say('there is nothing in this file but blank lines and remarks') }
  if (numbers.length * 2 > content.length) {
    return { line: numbers[0]!.number, message: say('there is only one column; a log needs a time and a position, separated by comma, semicolon or tab') }
  }
  return { line: content.at(-1)!.number, message: say('this is no table of numbers separated by comma, semicolon or tab') }
}

/** The first line that holds data and is followed by data. */
function firstData(content: readonly HeadLine[], shape: Shape): number {
  const isData = ({ text }: HeadLine) => looksLikeData(shape.split(text), shape)
  return content.findIndex((line, at) => isData(line) && (at + 1 === content.length || isData(content[at + 1]!)))
}

function looksLikeData(fields: readonly string[], { width, numeric, decimal }: Shape): boolean {
  if (fields.length !== width) return false
  const found = numeric.filter((column) => numberFrom(fields[column]!, decimal) !== undefined || clockSeconds(fields[column]!) !== undefined)
  return found.length > 0 && numeric.every((column) => found.includes(column) || meansMissing(fields[column]!))
}
