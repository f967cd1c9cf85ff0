import { lineEnd, lineEndOf, lineStart } from '../../text'
import { say } from '../../words/say'
import type { MapNode, Pair, ScalarNode, TreeNode } from '../tree'
import { Refusal } from './refusal'
import type { Context } from './writeScalar'

/** The blank columns before a key, so that a line put beside it stands under it: `  - id: x` gives four spaces. */
export function indentOf(text: string, offset: number): string {
  return ' '.repeat(offset - lineStart(text, offset))
}

/** Whether nothing but blanks stands before an offset on its line. */
export function isFirstOnLine(text: string, offset: number): boolean {
  return /^ *$/.test(text.slice(lineStart(text, offset), offset))
}

/** The blank columns under which a new key of a block map is put. @throws Refusal where no key shows them */
export function indentUnder(text: string, map: MapNode): string {
  const first = map.pairs.find(({ key }) => isPlainKey(text, key))
  if (!first) throw new Refusal(say('the keys here are written in a way that cannot be continued; change it in the text'))
  return indentOf(text, first.key.range.start)
}

/** A key that begins its line, or the item behind a dash: no `? ` before it, no anchor and no tag. */
export function isPlainKey(text: string, key: ScalarNode): boolean {
  return !key.marked && /^ *(?:- +)*$/.test(text.slice(lineStart(text, key.range.start), key.range.start))
}

/** The offset behind the last thing a node holds. */
export function contentEnd(node: TreeNode): number {
  if (node.kind === 'scalar' || node.flow || node.alias) return node.range.end
  const last = node.kind === 'map' ? node.pairs.at(-1) : undefined
  if (last) return Math.max(contentEnd(last.value), last.key.range.end)
  const item = node.kind === 'list' ? node.items.at(-1) : undefined
  return item ? Math.max(contentEnd(item), item.range.end) : node.range.end
}

/** The offset behind all that belongs to a pair, its colon too, and before the blanks that follow. */
export function pairEnd(text: string, { key, value }: Pair): number {
  const end = Math.max(contentEnd(value), key.range.end)
  if (!isNothing(value)) return end
  const behind = Math.max(end, behindColon(text, key.range.end) ?? 0)
  return key.range.end + text.slice(key.range.end, behind).trimEnd().length
}

/**
 * The end of the lines that follow the one `offset` is on and hold but comments further in than `column`, or blanks:
 * they belong to what stands above them, and a block value written above them would swallow them.
 */
export function deeperEnd(text: string, offset: number, column: number): number {
  let end = lineEnd(text, offset)
  for (let at = end; at < text.length;) {
    const start = text.indexOf('\n', at) + 1
    if (start === 0) break
    at = lineEnd(text, start)
    const line = text.slice(start, at)
    const indent = line.search(/[^ ]/)
    if (line.trim() !== '' && !(line[indent] === '#' && indent > column)) break
    if (line !== '') end = at
  }
  return end
}

/** Where a new line at `column` goes that is to follow a block value, which keeps the comments behind and below it. */
export function behindBlock(text: string, node: TreeNode, column: number, from = 0): number {
  return deeperEnd(text, Math.max(contentEnd(node), from), column)
}

/** Whether a node ends in a `|` or `>` block, which takes further-in lines that come to stand below it for its own. */
export function endsInBlock(node: TreeNode): boolean {
  if (node.kind === 'scalar') return node.style === 'block' && !node.alias
  const last = node.kind === 'map' ? node.pairs.at(-1)?.value : node.items.at(-1)
  return last !== undefined && !node.flow && !node.alias && endsInBlock(last)
}

/** A value that ends in a `|+` block owns the blank lines below it. */
export function keepsBlankLines(text: string, node: TreeNode): boolean {
  if (node.alias) return false
  if (node.kind === 'scalar') return node.style === 'block' && /^[|>]\d?\+/.test(text.slice(node.range.start, node.range.start + 3))
  const last = node.kind === 'map' ? node.pairs.at(-1)?.value : node.items.at(-1)
  return last !== undefined && !node.flow && keepsBlankLines(text, last)
}

/** How a value under this map is written. */
export function contextOf(text: string, map: MapNode): Context {
  return { flow: map.flow, indent: map.flow || map.pairs.length === 0 ? '' : indentUnder(text, map), lineEnd: lineEndOf(text) }
}

/** The offset behind the `:` of a key, found over blanks only; `undefined` where there is none. */
export function behindColon(text: string, keyEnd: number): number | undefined {
  const match = /^\s*:/.exec(text.slice(keyEnd, keyEnd + 200))
  return match ? keyEnd + match[0].length : undefined
}

/** The first offset from `at` on that holds neither blank nor comment. Only for places outside of values. */
export function skipBlank(text: string, at: number): number {
  const blank = /[ \t\r\n]*(?:#[^\n]*\n[ \t\r\n]*)*(?:#[^\n]*)?/y
  blank.lastIndex = at
  blank.test(text)
  return blank.lastIndex
}

/** A value that is missing: left empty, or written as null. */
export function isNothing(node: TreeNode): boolean {
  return node.kind === 'scalar' && node.value === null && !node.alias
}
