import type { Range } from '../text'

/** Where a text can be cut: what stands before the first entry, each entry with what follows it, and what follows the last. */
export interface Cut {
  head: Range
  entries: Range[]
  tail?: Range
}

/** `entries:` as a line of its own at the left edge: the list stands below it. */
const key = /^entries:[ \t]*(?:#[^\r\n\u2028\u2029]*)?\r?\n/m
/** Lines that say nothing, then the mark of the first item. */
const firstItem = /(?:[ \t]*(?:#[^\r\n]*)?\r?\n)*( *)-(?=[ \r\n])/y

/**
 * Finds the entries of a notebook by their lines alone, without parsing; `undefined` where they are not written as a
 * list with a line of its own for each mark. Whether the cuts are true ones the parser has to tell.
 */
export function cutAtEntries(text: string): Cut | undefined {
  const found = key.exec(text)
  if (!found) return undefined
  firstItem.lastIndex = found.index + found[0].length
  const first = firstItem.exec(text)
  if (!first) return undefined
  const indent = first[1]!
  const start = firstItem.lastIndex - 1 - indent.length
  const end = endOfList(text, start, indent.length)
  // At the start of a text this is a mark of its encoding; here it is part of a key.
  if (text[end] === '\uFEFF') return undefined
  const starts = [start, ...marks(text, start, end, `\n${indent}-`)]
  return {
    head: { start: 0, end: start },
    entries: starts.map((from, at) => ({ start: from, end: starts[at + 1] ?? end })),
    ...(end < text.length ? { tail: { start: end, end: text.length } } : {}),
  }
}

/**
 * Cuts a later version of a text where an earlier one was cut, of which `front` entries and what stands before them are the
 * same, and so are `back` entries and what stands behind them: only what lies between is looked at. `undefined` where the list
 * may end there.
 */
export function cutAgain(text: string, earlier: { text: string; cut: Cut }, front: number, back: number): Cut | undefined {
  const { head, entries, tail } = earlier.cut
  const by = text.length - earlier.text.length
  const from = entries[front]?.start
  const to = back > 0 ? entries.at(-back)!.start + by : by + (tail ? tail.start : earlier.text.length)
  if (from === undefined || to <= from) return undefined
  const between = text.slice(from, to)
  const spaces = /^ */.exec(between)![0]
  const isItem = /^ *-[ \r\n]/.test(between) && earlier.text.startsWith(`${spaces}-`, entries[0]!.start)
  if (!isItem || endOfList(between, 0, spaces.length) < between.length || (to < text.length && !between.endsWith('\n'))) return undefined
  // The line end before what follows leads to a mark that is not one of these.
  const starts = [from, ...marks(text, from, to - 1, `\n${spaces}-`)]
  return {
    head,
    entries: [
      ...entries.slice(0, front),
      ...starts.map((start, at) => ({ start, end: starts[at + 1] ?? to })),
      ...(by === 0 ? entries.slice(entries.length - back) : entries.slice(entries.length - back).map(({ start, end }) => ({ start: start + by, end: end + by }))),
    ],
    ...(tail ? { tail: { start: tail.start + by, end: text.length } } : {}),
  }
}

function marks(text: string, from: number, end: number, mark: string): number[] {
  const found: number[] = []
  for (let at = text.indexOf(mark, from); at !== -1 && at < end; at = text.indexOf(mark, at + 1)) {
    const next = text[at + mark.length]
    if (next === undefined || next === ' ' || next === '\n' || next === '\r') found.push(at + 1)
  }
  return found
}

/** The list ends before the next key at the left edge. */
function endOfList(text: string, from: number, indent: number): number {
  const key = indent === 0 ? /\n(?=[^ \t\r\n#-]|-[^ \r\n])/g : /\n(?=[^ \t\r\n#])/g
  key.lastIndex = from
  return key.test(text) ? key.lastIndex : text.length
}
