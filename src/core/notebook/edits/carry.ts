import { lineEndOf, lineStart, type TextChange } from '../../text'

/** Lines that are carried to another place together. */
export interface Item {
  /** The start of the comments that stand right above it, no further in than what it begins with. */
  lead: number
  /** The start of the line it begins in. */
  start: number
  /** Behind its last line, comments further in included, without the line end. */
  end: number
  ownsBlanks: boolean
  /** A blank line, where one stands above it. */
  gap: string
}

/** The first of some items behind the last one. */
export function carriedDown(text: string, items: readonly Item[]): TextChange[] {
  const [first, last, gaps] = [items[0]!, items.at(-1)!, gapsOf(text, items)]
  return [
    { start: first.lead, end: items[1]!.lead, text: '' },
    ...gaps.slice(1).flatMap((gap, at) => rewritten(gap, gaps[at]!)),
    { start: last.end, end: last.end, text: gaps.at(-1)!.text + text.slice(first.lead, first.end) },
  ]
}

/** The last of some items before the first one. */
export function carriedUp(text: string, items: readonly Item[]): TextChange[] {
  const [first, last, gaps] = [items[0]!, items.at(-1)!, gapsOf(text, items)]
  return [
    { start: first.lead, end: first.lead, text: text.slice(last.lead, last.end) + gaps[0]!.text },
    ...gaps.slice(0, -1).flatMap((gap, at) => rewritten(gap, gaps[at + 1]!)),
    { start: items.at(-2)!.end, end: last.end, text: '' },
  ]
}

/** What stands between each item and the next. */
const gapsOf = (text: string, items: readonly Item[]): TextChange[] =>
  items.slice(1).map(({ lead }, at) => ({ start: items[at]!.end, end: lead, text: text.slice(items[at]!.end, lead) }))

const rewritten = (gap: TextChange, by: TextChange): TextChange[] => (gap.text === by.text ? [] : [{ ...gap, text: by.text }])

/** Comments further in than what they stand above belong to what stands above them, and may be the last lines of its text. */
export function leadOf(text: string, start: number, column: number): number {
  if (start === 0) return start
  const above = lineStart(text, start - 1)
  const line = text.slice(above, start)
  const indent = line.search(/[^ ]/)
  return line[indent] === '#' && indent <= column ? leadOf(text, above, column) : start
}

/** A blank line, where one stands above a line. */
export const gapAbove = (text: string, start: number): string => (/\n[ \t]*\r?\n$/.test(text.slice(0, start)) ? lineEndOf(text) : '')
