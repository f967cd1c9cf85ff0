import { isBlank } from './scalars'
import { Scan, type Frame } from './scan'

/** Scans from the top-level key above the cursor to the cursor; nothing further up can be open there. */
export function scanTo(text: string, offset: number): Scan {
  const scan = new Scan(text)
  for (let at = sectionStart(text, offset), far = false; ;) {
    const next = text.indexOf('\n', at)
    if (next < 0 || next >= offset) {
      scan.line(at, text[offset - 1] === '\r' && next === offset ? offset - 1 : offset)
      return scan
    }
    scan.line(at, text[next - 1] === '\r' && next > at ? next - 1 : next)
    at = next + 1
    const list = scan.top?.kind === 'map' ? scan.frames.at(-2) : undefined
    if (far || list?.kind !== 'list' || list.flow || scan.frames.length !== 3) continue
    // A section's first item is open: of the items behind it only the last before the cursor matters.
    far = true
    at = skipItems(text, at, offset, list)
  }
}

/** Counts the items of a list up to the cursor, and gives the beginning of the last one's line. */
function skipItems(text: string, from: number, offset: number, list: Frame): number {
  const dash = `\n${' '.repeat(list.column)}-`
  let last = from
  let items = 0
  for (let at = text.indexOf(dash, from - 1); at >= 0 && at + dash.length < offset; at = text.indexOf(dash, at + 1)) {
    if (!isBlank(text[at + dash.length])) continue
    // The scan itself counts the one it goes on with.
    if (items++ > 0) list.index++
    last = at + 1
  }
  return last
}

/** The beginning of the last line at or above the cursor that has a top-level key. */
function sectionStart(text: string, offset: number): number {
  let at = startOfLine(text, offset)
  while (at > 0 && (isBlank(text[at]) || text[at] === '#' || text[at] === '-')) at = startOfLine(text, at - 1)
  return at
}

function startOfLine(text: string, offset: number): number {
  return offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1
}
