import { parquetWriteBuffer, type ColumnSource } from 'hyparquet-writer'
import { parquetText } from '../../../../../src/core/logs/reading/parquet/parquetText'
import { say } from '../../../../../src/core/words/say'

/** A Parquet file of these columns, in groups of 1000 rows. */
export function aParquet(columnData: ColumnSource[]): Uint8Array<ArrayBuffer> {
  return new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize: 1000 }))
}

/** The lines that its columns become. */
export async function linesOf(file: Uint8Array): Promise<string[]> {
  let text = ''
  for await (const part of parquetText(new Uint8Array(file).buffer, say)) text += part
  return text.split('\n').slice(0, -1)
}
