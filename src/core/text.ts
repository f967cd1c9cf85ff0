/** A stretch of a text, as offsets in UTF-16 code units; `end` is exclusive. */
export interface Range {
  start: number
  end: number
}

/** A value that knows where it stands in the text it was read from. */
export interface Located<T> {
  value: T
  range: Range
}

/** Replace the text between `start` and `end` by `text`. Lists of changes never overlap and all count in the old text. */
export interface TextChange extends Range {
  text: string
}

/** Changes from the front of the text to its back; of several insertions at one place the first listed comes first. */
export function inOrder(changes: readonly TextChange[]): TextChange[] {
  return [...changes].sort((a, b) => a.start - b.start || a.end - b.end)
}

/**
 * Applies changes to the text they were computed for.
 *
 * @example applyChanges('3 out', [{ start: 0, end: 1, text: '4' }]) // '4 out'
 */
export function applyChanges(text: string, changes: readonly TextChange[]): string {
  let at = 0
  const pieces = inOrder(changes).map((change) => {
    const piece = text.slice(at, change.start) + change.text
    at = change.end
    return piece
  })
  return pieces.join('') + text.slice(at)
}

/** The line end a text uses: the first one found, `\n` for a text of one line. */
export function lineEndOf(text: string): '\n' | '\r\n' {
  const at = text.indexOf('\n')
  return at > 0 && text[at - 1] === '\r' ? '\r\n' : '\n'
}

/** Offset of the first character of the line that holds `offset`; a byte order mark before the first line is none of its. */
export function lineStart(text: string, offset: number): number {
  const at = offset > 0 ? text.lastIndexOf('\n', offset - 1) + 1 : 0
  return at === 0 && offset > 0 && text.startsWith('\ufeff') ? 1 : at
}

/** Offset just before the line end of the line that holds `offset` (before `\r\n` too). */
export function lineEnd(text: string, offset: number): number {
  const at = text.indexOf('\n', offset)
  const end = at < 0 ? text.length : at
  return end > offset && text[end - 1] === '\r' ? end - 1 : end
}

/** Line and column of an offset, both counted from 0. */
export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  let line = 0
  let start = 0
  for (let at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', start)) {
    line++
    start = at + 1
  }
  return { line, column: offset - start }
}

/** The offsets at which the lines of a text begin; the first is 0. */
export function lineStarts(text: string): number[] {
  const starts = [0]
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1)
  return starts
}

/** The line, from 0, that holds an offset. */
export function lineOf(starts: readonly number[], offset: number): number {
  let low = 0
  let high = starts.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (starts[middle]! <= offset) low = middle
    else high = middle - 1
  }
  return low
}
