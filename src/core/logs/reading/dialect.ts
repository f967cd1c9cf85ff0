export type Separator = ',' | ';' | '\t'
export type DecimalMark = '.' | ','

/** A column by its heading; one without a heading is named after its place: `column 3`. */
export interface Column {
  name: string
  /** As written in the unit line, or in brackets behind the heading. */
  unit?: string
}

/** How a table of numbers is written, as found in its first lines. */
export interface Dialect {
  separator: Separator
  decimal: DecimalMark
  /** Whether fields stand in quotes, so that separators and line ends may stand inside them. */
  quoted: boolean
  /** The file is one of Parquet; what else is told here is how its columns were written as text. */
  parquet?: true
  /** Columns of a Parquet file that are left out: they hold lists or structures. */
  unread?: readonly string[]
  columns: readonly Column[]
  /** Lines of the file, from 1; absent where there is no such line. */
  headerLine?: number
  unitLine?: number
  /** Where the numbers begin: the line, from 1, and the place of its first byte. */
  dataLine: number
  dataOffset: number
}

const separatorWords: Record<Separator, string> = { ',': 'comma', ';': 'semicolon', '\t': 'tab' }

/** What was found, in a sentence for people. */
export function describeDialect({ separator, decimal, quoted, parquet, columns, headerLine, unitLine, dataLine }: Dialect): string {
  const head = headerLine === undefined ? 'no line of headings' : `headings in line ${headerLine}`
  return [
    ...(parquet ? [`${columns.length} columns of a Parquet file, as lines of text`] : [`${columns.length} columns separated by ${separatorWords[separator]}`, `decimal ${decimal === '.' ? 'point' : 'comma'}`]),
    ...(quoted ? ['fields in quotes'] : []), head, ...(unitLine === undefined ? [] : [`units in line ${unitLine}`]), `numbers from line ${dataLine}`,
  ].join(', ')
}
