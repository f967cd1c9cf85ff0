/**
 * Blocks of cells as tab-separated text, the way spreadsheets put them on the clipboard: a cell that holds a tab,
 * a line break or a quote stands in quotes, quotes within it are doubled.
 */
export function printTsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(quoted).join('\t')).join('\n')
}

/** Reads such a text. Any line end; a last empty line is none. Never fails: a stray quote is a character. */
export function readTsv(text: string): string[][] {
  const rows: string[][] = [[]]
  const source = text.replace(/\r\n?/g, '\n').replace(/\n$/, '')
  let at = 0
  for (;;) {
    const [cell, end] = readCell(source, at)
    rows[rows.length - 1]!.push(cell)
    if (end >= source.length) return rows
    if (source[end] === '\n') rows.push([])
    at = end + 1
  }
}

function quoted(text: string): string {
  return /[\t\n\r"]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text
}

function readCell(source: string, start: number): [text: string, end: number] {
  const plain = () => {
    const rest = source.slice(start)
    const length = rest.search(/[\t\n]/)
    const end = length < 0 ? source.length : start + length
    return [source.slice(start, end), end] as [string, number]
  }
  if (source[start] !== '"') return plain()
  const match = /"((?:[^"]|"")*)"(?=[\t\n]|$)/y
  match.lastIndex = start
  const found = match.exec(source)
  return found ? [found[1]!.replace(/""/g, '"'), match.lastIndex] : plain()
}
