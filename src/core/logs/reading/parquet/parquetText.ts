import { decompress } from 'fzstd'
import { parquetMetadataAsync } from 'hyparquet/src/metadata.js'
import { parquetRead } from 'hyparquet/src/read.js'
import type { AsyncBuffer, DecodedArray, FileMetaData, RowGroup } from 'hyparquet/src/types.js'
import type { say as sayInWords } from '../../../words/say'
import { parquetMark, parquetUnread } from './isParquet'
import { textColumns, timesAsNanoseconds, unreadColumns, type TextColumn } from './columnText'

/** The bytes of a file by their place: what tells of its columns stands at its end. */
export type BytesByPlace = AsyncBuffer

/** Rows of text that are handed on at once. */
const rowsTogether = 2048
/** Snappy is the library's own; Zstandard is what some write by themselves. */
const unpacked = new Set(['UNCOMPRESSED', 'SNAPPY', 'ZSTD'])
const compressors = { ZSTD: (packed: Uint8Array, length: number) => decompress(packed, new Uint8Array(length)) }
/** A group of rows is unpacked as a whole, and memory is not ours alone. */
const mostBytes = 1 << 30

/**
 * The columns of a Parquet file as lines of text between tabs, so that they are read, described and mapped as any other
 * log is. A group of rows is in memory at a time. Numbers are written so that the same ones are read again.
 *
 * This is a program of its own that is loaded where there is such a file; what it has to say is said by who loaded it.
 *
 * @throws Error with a sentence for the person
 */
export async function* parquetText(file: BytesByPlace, say: typeof sayInWords): AsyncGenerator<string> {
  const sound = async <Value>(reading: Promise<Value>): Promise<Value> => reading.catch(() => { throw new Error(say('this Parquet file is broken or cut short')) })
  const metadata = await sound(parquetMetadataAsync(file, { geoparquet: false, parsers: timesAsNanoseconds }))
  const refused = refusal(metadata, say)
  if (refused) throw new Error(refused)
  const columns = textColumns(metadata)
  yield headLines(columns, unreadColumns(metadata))
  let from = 0
  for (const group of metadata.row_groups) {
    const rows = Number(group.num_rows)
    const values = await sound(readGroup(file, metadata, { columns, from, rows }))
    for (let row = 0; row < rows; row += rowsTogether) yield linesOf(columns, values, row, Math.min(rows, row + rowsTogether))
    from += rows
  }
}

function refusal({ row_groups: groups }: FileMetaData, say: typeof sayInWords): string | undefined {
  const codecs = groups.flatMap(({ columns }) => columns.map(({ meta_data: column }) => column?.codec ?? 'UNCOMPRESSED'))
  const codec = codecs.find((each) => !unpacked.has(each))
  if (codec !== undefined) return say`this Parquet file is packed by ${codec}, which is not read here; write it with Snappy or Zstandard, or save it as CSV`
  return groups.some((group) => bytesOf(group) > mostBytes) ? say('this Parquet file has more than 1 GB in one group of rows; write it in smaller ones') : undefined
}

const bytesOf = ({ columns, num_rows: rows }: RowGroup) => Math.max(Number(rows) * 8 * columns.length, ...columns.map(({ meta_data: column }) => Number(column?.total_uncompressed_size ?? 0n)))

/** The values of a group by column; as many as the group has rows, or the file is broken. */
async function readGroup(file: AsyncBuffer, metadata: FileMetaData, { columns, from, rows }: { columns: readonly TextColumn[]; from: number; rows: number }): Promise<ArrayLike<unknown>[]> {
  const parts = new Map<string, DecodedArray[]>(columns.map(({ name }) => [name, []]))
  if (rows === 0) return columns.map(() => [])
  await parquetRead({
    file, metadata, compressors, parsers: timesAsNanoseconds, columns: columns.map(({ name }) => name), rowStart: from, rowEnd: from + rows,
    onChunk: ({ columnName, columnData }) => { parts.get(columnName)?.push(columnData) },
  })
  return columns.map(({ name }) => {
    const [first, ...more] = parts.get(name)!
    const whole = first && more.length === 0 ? first : parts.get(name)!.flatMap((part): unknown[] => Array.from(part))
    if (whole.length !== rows) throw new Error('fewer values than rows')
    return whole
  })
}

/** The mark, what is left out, headings and, where one is known, a line of units. */
function headLines(columns: readonly TextColumn[], unread: readonly string[]): string {
  const units = columns.map(({ unit }) => unit)
  return `${parquetMark}\n${unread.length > 0 ? `${parquetUnread}${unread.join('\t')}\n` : ''}${columns.map(({ heading }) => heading).join('\t')}\n${units.some((unit) => unit !== '') ? `${units.join('\t')}\n` : ''}`
}

function linesOf(columns: readonly TextColumn[], values: readonly ArrayLike<unknown>[], from: number, to: number): string {
  let text = ''
  for (let row = from; row < to; row++) {
    for (let at = 0; at < columns.length; at++) text += (at === 0 ? '' : '\t') + columns[at]!.write(values[at]![row])
    text += '\n'
  }
  return text
}
