import { lineEnd, lineEndOf, lineStart, type TextChange } from '../../text'
import { say } from '../../words/say'
import { holdsShared, type MapNode, type Pair } from '../tree'
import { commentsIn } from './comments'
import { deeperEnd, endsInBlock, indentOf, isFirstOnLine, isPlainKey, keepsBlankLines, pairEnd, skipBlank } from './layout'
import { Refusal } from './refusal'

/**
 * Takes a pair out of a map and leaves everything else as it is: comments in and behind it stay, on lines of their own;
 * the map's last pair leaves `{}` behind (see `removePath` for taking an emptied map out as well).
 *
 * @throws Refusal where an alias elsewhere stands for something in it
 */
export function removePair(text: string, map: MapNode, pair: Pair): TextChange[] {
  if (holdsShared(pair.value) || holdsShared(pair.key)) throw new Refusal(say('another place stands for a value in here; change it in the text'))
  if (map.flow) return removeFromFlow(text, map, pair)
  refuseOddKey(text, pair)
  const { start } = pair.key.range
  const end = pairEnd(text, pair)
  if (map.pairs.length === 1) return [{ start, end, text: `${commentLines(text, start, end)}{}` }]
  if (!isFirstOnLine(text, start)) return [pullUpNext(text, map, pair)]
  const previous = map.pairs[map.pairs.indexOf(pair) - 1]
  if (previous && keepsBlankLines(text, previous.value)) throw new Refusal(say('the text before this owns the blank lines below it; change it in the text'))
  // Below a block value what stands further in would become part of it, so it moves out to where the pair was.
  const isTaken = previous && endsInBlock(previous.value)
  return [eraseLines(text, start, isTaken ? deeperEnd(text, end, indentOf(text, start).length) : end)]
}

function refuseOddKey(text: string, { key }: Pair): void {
  if (!isPlainKey(text, key)) throw new Refusal(say`\`${key.text}\` is written with an anchor, a tag or a \`?\`; change it in the text`)
}

/** The comments of a stretch, each on its line with what then follows under `start`; empty where there are none. */
function commentLines(text: string, start: number, end: number): string {
  return commentsIn(text, start, end).map((comment) => comment + lineEndOf(text) + indentOf(text, start)).join('')
}

/** Erases a stretch that begins its line: the whole lines, or all but the comments in and behind it. */
export function eraseLines(text: string, start: number, end: number): TextChange {
  const kept = commentLines(text, start, end)
  const stop = lineEnd(text, end)
  const behind = text.slice(end, stop).search(/\S/)
  if (behind >= 0) return { start, end: end + behind, text: kept }
  return kept === '' ? eraseWholeLines(text, start, stop) : { start, end: stop, text: kept.trimEnd() }
}

/** Erases the lines from that of `start` to that of `end`, with their line ends. */
export function eraseWholeLines(text: string, start: number, end: number): TextChange {
  const from = lineStart(text, start)
  const next = text.indexOf('\n', end)
  if (next >= 0) return { start: from, end: next + 1, text: '' }
  // The last line of a text without a final line end takes the line end before it along.
  return { start: text.slice(0, from).search(/\r?\n$/) >= 0 ? from - (text[from - 2] === '\r' ? 2 : 1) : from, end: text.length, text: '' }
}

/** `- id: x` with more below: the next pair takes its place behind the dash, with the comments between in front. */
function pullUpNext(text: string, map: MapNode, pair: Pair): TextChange {
  const next = map.pairs[map.pairs.indexOf(pair) + 1]!
  refuseOddKey(text, next)
  const { start } = pair.key.range
  const end = next.key.range.start
  return { start, end, text: commentLines(text, start, end) }
}

function removeFromFlow(text: string, map: MapNode, pair: Pair): TextChange[] {
  const at = map.pairs.indexOf(pair)
  const [previous, next] = [map.pairs[at - 1], map.pairs[at + 1]]
  const start = pair.key.range.start
  const end = pairEnd(text, pair)
  if (pair.key.marked || next?.key.marked || text[start - 1] === '?' || /\?\s+$/.test(text.slice(lineStart(text, start), start))) {
    throw new Refusal(say`\`${pair.key.text}\` is written in a way that cannot be taken out; change it in the text`)
  }
  const kept = commentsIn(text, start, end).map((comment) => ` ${comment}${lineEndOf(text)}${indentOf(text, start)}`).join('')
  if (next && isOneComma(text.slice(end, next.key.range.start))) return [{ start, end: next.key.range.start, text: kept }]
  if (!next && previous && isOneComma(text.slice(pairEnd(text, previous), start))) return [{ start: pairEnd(text, previous), end, text: kept }]
  // Comments stand between: only the pair goes, and the comma that follows it.
  const comma = skipBlank(text, end)
  return [{ start, end, text: kept }, ...(text[comma] === ',' ? [{ start: comma, end: comma + 1, text: '' }] : [])]
}

function isOneComma(between: string): boolean {
  return /^\s*,\s*$/.test(between)
}
