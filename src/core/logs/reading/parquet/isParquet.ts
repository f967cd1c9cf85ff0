/** By the first bytes; a heading may well begin with the same letters, but goes on as text. */
export function isParquet(head: Uint8Array): boolean {
  const behind = head[4] ?? 32
  return head[0] === 0x50 && head[1] === 0x41 && head[2] === 0x52 && head[3] === 0x31 && (behind < 9 || (behind > 13 && behind < 32))
}

/** The first line of a Parquet file's columns as text: a remark, as in any log. */
export const parquetMark = '# columns of a Parquet file'
/** How a line begins that names, between tabs, the columns that are left out: those with lists or structures. */
export const parquetUnread = '# columns with several values a row, not read:\t'
