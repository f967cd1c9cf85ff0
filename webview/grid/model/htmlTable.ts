/**
 * Blocks of cells as an HTML table and back: what spreadsheets put on the clipboard beside plain text, and the only way in
 * which lines within a cell come through all of them. Reading works on a parsed document, so nothing in it is run or loaded.
 */

/** A block as a table; everything in a cell is text. */
export function printHtmlTable(rows: readonly (readonly string[])[]): string {
  const body = rows.map((row) => `<tr>${row.map((cell) => `<td>${escaped(cell).replace(/\r\n?|\n/g, '<br>')}</td>`).join('')}</tr>`).join('')
  return `<table><tbody>${body}</tbody></table>`
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
const escaped = (text: string) => text.replace(/[&<>"]/g, (found) => entities[found]!)

/** What of a parsed node is needed to read a table. */
export interface HtmlNode {
  nodeName: string
  textContent: string | null
  childNodes: ArrayLike<HtmlNode>
  getAttribute?(name: string): string | null
}

/** A merged cell never reaches further than this: nobody merges more, and a table may claim anything. */
const mostMerged = 100

/** The first table below a node as a block; undefined where there is none. Merged cells leave those they cover empty. */
export function readHtmlTable(root: HtmlNode): string[][] | undefined {
  const table = firstOf(root, 'TABLE')
  if (!table) return undefined
  const block: string[][] = []
  const covered = new Set<string>()
  for (const [y, row] of rowsIn(table).entries()) {
    const line: string[] = (block[y] = [])
    for (const cell of children(row).filter(({ nodeName }) => nodeName === 'TD' || nodeName === 'TH')) {
      while (covered.has(`${y} ${line.length}`)) line.push('')
      const [across, down] = ['colspan', 'rowspan'].map((name) => Math.max(1, Math.min(mostMerged, Number(cell.getAttribute?.(name)) || 1))) as [number, number]
      for (let below = 1; below < down; below++) for (let beside = 0; beside < across; beside++) covered.add(`${y + below} ${line.length + beside}`)
      line.push(cellText(cell), ...Array.from({ length: across - 1 }, () => ''))
    }
  }
  return block.some((line) => line.length > 0) ? block : undefined
}

const children = ({ childNodes }: HtmlNode) => Array.from(childNodes)

function firstOf(node: HtmlNode, name: string): HtmlNode | undefined {
  for (const child of children(node)) {
    const found = child.nodeName === name ? child : firstOf(child, name)
    if (found) return found
  }
  return undefined
}

/** The rows of this table, not of one within a cell. */
function rowsIn(node: HtmlNode): HtmlNode[] {
  return children(node).flatMap((child) => (child.nodeName === 'TR' ? [child] : ['THEAD', 'TBODY', 'TFOOT'].includes(child.nodeName) ? rowsIn(child) : []))
}

/** Line ends in the source are blanks; `<br>` and paragraphs begin a line. */
function cellText(node: HtmlNode): string {
  const raw = (each: HtmlNode): string => {
    if (each.nodeName === 'BR') return '\n'
    if (each.nodeName === '#text') return (each.textContent ?? '').replace(/[ \t\r\n]+/g, ' ')
    if (each.nodeName === '#comment' || each.nodeName === 'STYLE' || each.nodeName === 'SCRIPT') return ''
    const inside = children(each).map(raw).join('')
    return each.nodeName === 'P' || each.nodeName === 'DIV' ? `\n${inside}\n` : inside
  }
  return raw(node).replace(/\u00a0/g, ' ').replace(/[ \n]+/g, (blanks) => (blanks.includes('\n') ? '\n' : blanks)).trim()
}
