import { carriageReturn, decodeText, lineFeed } from './bytes'

/** A line at the beginning of a file: its place in bytes and its text without the line end. */
export interface HeadLine {
  /** From 1. */
  number: number
  start: number
  text: string
}

/** As many lines as it takes to know a dialect. */
const mostLines = 1500

/** A field in quotes runs on over at most so many lines. */
const mostJoined = 20

/** The whole lines at the beginning of a file; a last one without a line end counts only where the file ends with it. */
export function headLines(head: Uint8Array, whole: boolean): HeadLine[] {
  return joinQuoted(physicalLines(head, whole))
}

function physicalLines(head: Uint8Array, whole: boolean): HeadLine[] {
  const lines: HeadLine[] = []
  let start = head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf ? 3 : 0
  while (start < head.length && lines.length < mostLines) {
    const found = head.indexOf(lineFeed, start)
    if (found < 0 && !whole) break
    const end = found < 0 ? head.length : found
    const textEnd = end > start && head[end - 1] === carriageReturn ? end - 1 : end
    lines.push({ number: lines.length + 1, start, text: decodeText(head, start, textEnd) })
    start = end + 1
  }
  return lines
}

/** A line whose last quote stays open and the lines up to the one that closes it are one. */
function joinQuoted(lines: readonly HeadLine[]): HeadLine[] {
  const isOdd = ({ text }: HeadLine) => text.split('"').length % 2 === 0
  const joined: HeadLine[] = []
  for (let at = 0; at < lines.length;) {
    const behind = isOdd(lines[at]!) ? lines.slice(at + 1, at + 1 + mostJoined).findIndex(isOdd) : -1
    const parts = lines.slice(at, at + 2 + behind)
    joined.push({ ...lines[at]!, text: parts.map(({ text }) => text).join('\n') })
    at += parts.length
  }
  return joined
}
