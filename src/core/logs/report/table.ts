/** Rows of cells in columns as wide as they need: the first left, the others right; a row of one cell is a heading. */
export function textTable(rows: readonly (readonly string[])[]): string[] {
  const columns = Math.max(...rows.map((row) => row.length))
  const widths = Array.from({ length: columns }, (_, at) => Math.max(...rows.filter((row) => row.length > 1).map((row) => (row[at] ?? '').length), 0))
  return rows.map((row) => row.map((cell, at) => (row.length === 1 ? cell : at === 0 ? cell.padEnd(widths[at]!) : cell.padStart(widths[at]!))).join('  ').trimEnd())
}
