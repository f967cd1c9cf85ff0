import { clockSeconds } from './clock'
import type { DecimalMark, Separator } from './dialect'
import { meansMissing, numberFrom, splitFields } from './fieldText'
import type { HeadLine } from './headLines'

/** The shape of the table's body under one separator. */
export interface Shape {
  separator: Separator
  decimal: DecimalMark
  quoted: boolean
  /** How many fields a line has. */
  width: number
  /** The columns of numbers or clock times, from 0. */
  numeric: readonly number[]
  split: (line: string) => string[]
}

const separators: readonly Separator[] = ['\t', ';', ',']

/** The last lines looked at: enough to be sure, and where the body is most likely to be. */
const linesLookedAt = 200

/** The separator under which the last lines make the best table: the most columns of numbers among all its columns. */
export function findShape(content: readonly HeadLine[]): Shape | undefined {
  const tail = content.slice(-Math.min(linesLookedAt, Math.max(1, Math.ceil(content.length / 2))))
  const shapes = separators.flatMap((separator) => shapeUnder(separator, tail))
  return shapes.sort((a, b) => b.score - a.score)[0]
}

function shapeUnder(separator: Separator, tail: readonly HeadLine[]): (Shape & { score: number })[] {
  const split = (line: string) => splitFields(line, separator)
  const rows = tail.map(({ text }) => split(text))
  const width = commonest(rows.map((row) => row.length).filter((count) => count > 1))
  if (width === undefined) return []
  const body = rows.filter((row) => row.length === width)
  const quoted = tail.some(({ text }) => text.includes('"'))
  const marks: DecimalMark[] = separator === ',' && !quoted ? ['.'] : ['.', ',']
  const [best] = marks.map((decimal) => ({ decimal, numeric: numericColumns(body, width, decimal) })).sort((a, b) => b.numeric.length - a.numeric.length || certainty(body, b.decimal) - certainty(body, a.decimal))
  if (!best || best.numeric.length === 0) return []
  return [{ separator, quoted, width, split, ...best, score: (best.numeric.length / width) * (body.length / rows.length) }]
}

/** How many fields can only be numbers with this mark. */
function certainty(body: readonly (readonly string[])[], decimal: DecimalMark): number {
  return body.flat().filter((field) => field.includes(decimal) && numberFrom(field, decimal) !== undefined).length
}

function numericColumns(body: readonly (readonly string[])[], width: number, decimal: DecimalMark): number[] {
  return Array.from({ length: width }, (_, column) => column).filter((column) => {
    const written = body.map((row) => row[column]!).filter((field) => !meansMissing(field))
    const numbers = written.filter((field) => numberFrom(field, decimal) !== undefined || clockSeconds(field) !== undefined)
    return numbers.length > 0 && numbers.length >= 0.6 * written.length
  })
}

function commonest(counts: readonly number[]): number | undefined {
  const often = new Map<number, number>()
  for (const count of counts) often.set(count, (often.get(count) ?? 0) + 1)
  return [...often].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0]
}
