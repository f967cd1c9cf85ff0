/** Rows of cells of a text in RFC 4180, read character by character. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = []
  let [row, cell, quoted]: [string[], string, boolean] = [[], '', false]
  for (let at = 0; at < text.length; at++) {
    const character = text[at]!
    if (quoted) {
      if (character !== '"') cell += character
      else if (text[at + 1] === '"') cell += text[++at]!
      else quoted = false
    } else if (character === '"' && cell === '') quoted = true
    else if (character === ',' || character === '\n') {
      row.push(cell)
      cell = ''
      if (character === '\n') rows.push(row)
      if (character === '\n') row = []
    } else cell += character
  }
  return rows
}
