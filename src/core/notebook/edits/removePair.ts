import { lineEnd, lineStart, type TextChange } from '../../text'
import type { MapNode, Pair } from '../tree'
import { contentEnd, indentOf } from './layout'

/**
 * Takes a pair out of a map and leaves everything else as it is: a comment behind it stays, on its own line; the map's
 * last pair leaves `{}` behind (see `removePath` for taking an emptied map out as well).
 */
export function removePair(text: string, map: MapNode, pair: Pair): TextChange[] {
  if (map.flow) return [removeFromFlow(text, map, pair)]
  if (map.pairs.length === 1) return [{ start: pair.key.range.start, end: endOf(pair), text: '{}' }]
  return isFirstOnLine(text, pair.key.range.start) ? [eraseLines(text, pair.key.range.start, endOf(pair))] : [pullUpNext(text, map, pair)]
}

function endOf(pair: Pair): number {
  const end = Math.max(contentEnd(pair.value), pair.key.range.end)
  // An empty value ends where it is thought to be, which may be before the colon.
  return pair.value.kind === 'scalar' && pair.value.style === 'empty' ? Math.max(end, pair.key.range.end + 1) : end
}

function isFirstOnLine(text: string, offset: number): boolean {
  return text.slice(lineStart(text, offset), offset).trim() === ''
}

/** Erases a stretch that begins its line: the whole lines, or all but a comment behind it. */
export function eraseLines(text: string, start: number, end: number): TextChange {
  const rest = text.slice(end, lineEnd(text, end))
  const comment = rest.search(/\S/)
  if (comment >= 0) return { start, end: end + comment, text: '' }
  const from = lineStart(text, start)
  const next = text.indexOf('\n', end)
  if (next >= 0) return { start: from, end: next + 1, text: '' }
  // The last line of a text without a final line end takes the line end before it along.
  const before = from > 0 ? (text[from - 2] === '\r' ? from - 2 : from - 1) : from
  return { start: before, end: text.length, text: '' }
}

/** `- id: x` with more below: the next pair takes its place behind the dash, unless a comment stands between. */
function pullUpNext(text: string, map: MapNode, pair: Pair): TextChange {
  const next = map.pairs[map.pairs.indexOf(pair) + 1]!
  const between = text.slice(endOf(pair), next.key.range.start)
  if (between.trim() === '') return { start: pair.key.range.start, end: next.key.range.start, text: '' }
  const comment = between.search(/\S/)
  const indent = indentOf(text, next.key.range.start)
  const kept = between.slice(comment).trimEnd()
  return { start: pair.key.range.start, end: next.key.range.start, text: `${kept}${between.includes('\r\n') ? '\r\n' : '\n'}${indent}` }
}

function removeFromFlow(text: string, map: MapNode, pair: Pair): TextChange {
  const at = map.pairs.indexOf(pair)
  const next = map.pairs[at + 1]
  const previous = map.pairs[at - 1]
  const start = pair.key.range.start
  const end = endOf(pair)
  if (next && onlyComma(text.slice(end, next.key.range.start))) return { start, end: next.key.range.start, text: '' }
  if (!next && previous && onlyComma(text.slice(endOf(previous), start))) return { start: endOf(previous), end, text: '' }
  // Comments stand between: only the pair goes, with the comma that follows it.
  const comma = /^[ \t]*,/.exec(text.slice(end, end + 200))
  return { start, end: end + (comma && next ? comma[0].length : 0), text: '' }
}

function onlyComma(between: string): boolean {
  return between.replace(',', '').trim() === ''
}
