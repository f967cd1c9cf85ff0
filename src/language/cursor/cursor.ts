import type { Range } from '../../core/text'
import { keysInBlock, keysInFlow } from './keysBehind'
import { flowPlainEnd, isColon, isComment, isFlowColon, skipSpaces } from './scalars'
import type { Frame, Scan } from './scan'
import { scanTo } from './scanTo'

/** Where a cursor stands in a notebook, as far as a text that may be half typed tells. */
export interface Cursor {
  /** Keys and places in lists, from the top to the map a key is typed in, or to the value that is typed. */
  path: readonly (string | number)[]
  /**
   * What can be typed here: a `key` of the map at `path`; its `value`; `either`, where nothing is decided yet; or an
   * `item`, with its dash, of the list at `path`.
   */
  expects: 'key' | 'value' | 'either' | 'item'
  /** The whole of what is being typed, also behind the cursor; quotes excluded. */
  range: Range
  /** What is typed of it before the cursor. */
  typed: string
  /** Inside of `{…}` or `[…]`. */
  flow: boolean
  quote?: string
  /** The columns before a line that would stand beside this one. */
  indent: string
  /** Keys of the map, or names in the list, that stand there besides. */
  beside: ReadonlySet<string>
  /** A colon follows, so that only the name of a key is wanted. */
  hasColon: boolean
  /** No blank stands between the colon before it and the cursor. */
  glued: boolean
}

/** Finds where the cursor is; `undefined` in comments, in texts of several lines and where nothing can follow. */
export function findCursor(text: string, offset: number): Cursor | undefined {
  const scan = scanTo(text, offset)
  switch (scan.place) {
    case 'nothing': return undefined
    case 'value': return cursor(text, offset, scan, { frames: scan.frames, expects: 'value' })
    case 'flow': return cursor(text, offset, scan, { frames: scan.frames, expects: inFlow(scan.top!) })
    case 'line': return onLine(text, offset, scan)
  }
}

/** The frames that hold the cursor, and what can be typed there. */
interface Spot {
  frames: readonly Frame[]
  expects: Cursor['expects']
}

function inFlow(top: Frame): Cursor['expects'] {
  return top.kind === 'list' || top.key !== undefined ? 'value' : 'key'
}

/** The beginning of a line or of an item: its column tells what it belongs to. */
function onLine(text: string, offset: number, scan: Scan): Cursor | undefined {
  const { column } = scan
  const frames = [...scan.frames]
  while (frames.length > 0 && frames.at(-1)!.column > column) frames.pop()
  const top = frames.at(-1)
  if (!top) return cursor(text, offset, scan, { frames, expects: 'key' })
  if (top.column < column) return top.filled ? undefined : cursor(text, offset, scan, { frames, expects: 'either' })
  const holder = frames.at(-2)
  if (top.kind === 'map') return cursor(text, offset, scan, { frames, expects: 'key' })
  // A list may stand under its key's first letter; then a line without a dash is the next key.
  if (holder?.kind === 'map' && holder.column === column) return cursor(text, offset, scan, { frames: frames.slice(0, -1), expects: 'key' })
  return cursor(text, offset, scan, { frames, expects: 'item' })
}

function cursor(text: string, offset: number, { token, column }: Scan, { frames, expects }: Spot): Cursor {
  const top = frames.at(-1)
  const flow = top?.flow ?? false
  const start = token?.start ?? offset
  const inside = expects === 'value' || expects === 'either'
  const range = { start, end: endOfTyped(text, offset, flow, expects === 'value' && !flow, token?.quote) }
  const behind = skipSpaces(text, range.end + (token?.quote ? 1 : 0), text.length)
  return {
    path: [...frames.slice(0, -1).map(stepOf), ...(top && inside ? [stepOf(top)] : [])],
    expects, range, flow,
    typed: text.slice(start, offset),
    ...(token?.quote ? { quote: token.quote } : {}),
    indent: ' '.repeat(expects === 'value' ? Math.max(top?.column ?? 0, 0) : column),
    beside: keysBeside(text, range.end, { top, expects, column }),
    hasColon: flow ? isFlowColon(text, behind) : isColon(text, behind),
    glued: inside && token === undefined && text[offset - 1] === ':',
  }
}

function stepOf(frame: Frame): string | number {
  return frame.kind === 'list' ? frame.index : frame.key ?? ''
}

function keysBeside(text: string, from: number, { top, expects, column }: { top: Frame | undefined; expects: Cursor['expects']; column: number }): ReadonlySet<string> {
  if (expects === 'either') return new Set(keysInBlock(text, column, from))
  if (expects !== 'key') return new Set()
  if (top?.flow) return new Set([...top.keys, ...keysInFlow(text, top.column, from)])
  const own = top?.column ?? 0
  // The scan began at the cursor's own section: the sections above it have to be looked up.
  const above = own === 0 ? sectionsAbove(text, from) : top!.keys
  return new Set([...above, ...keysInBlock(text, own, from)])
}

function sectionsAbove(text: string, offset: number): string[] {
  const line = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1
  return [...text.slice(0, line).matchAll(/^([\w-]+):(?=\s)/gm)].map((match) => match[1]!)
}

function endOfTyped(text: string, offset: number, flow: boolean, wholeLine: boolean, quote: string | undefined): number {
  const newline = text.indexOf('\n', offset)
  const stop = newline < 0 ? text.length : newline
  if (quote !== undefined) {
    const close = text.indexOf(quote, offset)
    return close >= 0 && close < stop ? close : trimmed(text, offset, stop)
  }
  if (flow) return trimmed(text, offset, flowPlainEnd(text, offset, stop))
  let end = offset
  // A value reaches to the end of its line; a key, typed before something else, ends with its word.
  while (end < stop && !isColon(text, end) && !isComment(text, end) && (wholeLine || /[\p{L}\p{N}_./-]/u.test(text[end]!))) end++
  return trimmed(text, offset, end)
}

function trimmed(text: string, start: number, end: number): number {
  let at = end
  while (at > start && /\s/.test(text[at - 1]!)) at--
  return at
}
