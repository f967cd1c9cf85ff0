import { lineEnd, lineEndOf, lineStart } from '../../text'
import type { MapNode, TreeNode } from '../tree'
import type { Context } from './writeScalar'

/** The blank columns before a key, so that a line put beside it stands under it: `  - id: x` gives four spaces. */
export function indentOf(text: string, offset: number): string {
  return ' '.repeat(offset - lineStart(text, offset))
}

/** The offset behind the last thing a node holds. */
export function contentEnd(node: TreeNode): number {
  if (node.kind === 'scalar' || node.flow || node.alias) return node.range.end
  const last = node.kind === 'map' ? node.pairs.at(-1) : undefined
  if (last) return Math.max(contentEnd(last.value), last.key.range.end)
  const item = node.kind === 'list' ? node.items.at(-1) : undefined
  return item ? Math.max(contentEnd(item), item.range.end) : node.range.end
}

/** The end of the line that holds `offset`, comments on it included. */
export function behindLine(text: string, offset: number): number {
  return lineEnd(text, offset)
}

/** How a value under this map is written. */
export function contextOf(text: string, map: MapNode): Context {
  const first = map.pairs[0]
  return { flow: map.flow, indent: first && !map.flow ? indentOf(text, first.key.range.start) : '', lineEnd: lineEndOf(text) }
}

/** The offset behind the `:` of a key, found over blanks only; `undefined` where the key is written another way. */
export function behindColon(text: string, keyEnd: number): number | undefined {
  const match = /^[ \t]*:/.exec(text.slice(keyEnd, keyEnd + 200))
  return match ? keyEnd + match[0].length : undefined
}

/** The offset of the dash that begins the block item at `offset`. */
export function dashBefore(text: string, offset: number): number {
  const at = text.lastIndexOf('-', offset - 1)
  return at >= 0 && text.slice(at + 1, offset).trim() === '' ? at : offset
}
