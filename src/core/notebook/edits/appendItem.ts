import { lineEndOf, type TextChange } from '../../text'
import { say } from '../../words/say'
import type { Notebook } from '../notebook'
import { pairOf, type ListNode, type MapNode, type Pair, type TreeNode } from '../tree'
import { commentsIn } from './comments'
import { insertPair } from './insertPair'
import { behindBlock, behindColon, deeperEnd, indentOf, indentUnder, isNothing, keepsBlankLines, skipBlank } from './layout'
import { dashOf } from './listItems'
import { Refusal, refuseFixed, refuseMarked, refuseShared } from './refusal'
import type { Context } from './writeScalar'

/** The `key: value` texts of a new item, for the place where it is written. */
export type ItemLines = (context: Context) => string[]

/**
 * Adds a group of `key: value` lines behind the last item of a list at the top of the notebook, written as its
 * neighbours are; the list is made where it is missing.
 *
 * @throws Refusal where something else than a list stands there
 */
export function appendItem(notebook: Notebook, key: string, lines: ItemLines): TextChange[] {
  const { text, root } = notebook
  if (!root && notebook.findings.some(({ code }) => code === 'wrong-shape')) throw new Refusal(say('this file holds something else than a notebook; mend it in the text first'))
  const pair = pairOf(root, key)
  if (!root || !pair) return [newList(text, root, key, lines)]
  const list = pair.value
  refuseShared(list)
  if (list.kind === 'list' && list.items.length > 0) return [behindLast(text, list, lines)]
  if (list.kind !== 'list' && !isNothing(list)) throw new Refusal(say`\`${key}\` must be a list; mend it in the text first`)
  refuseMarked(list)
  return root.flow ? [firstInFlow(text, pair, lines)] : firstInBlock(text, root, pair, lines)
}

function newList(text: string, root: MapNode | undefined, key: string, lines: ItemLines): TextChange {
  const eol = lineEndOf(text)
  if (root) refuseFixed(text, root)
  if (root?.flow) return insertPair(text, root, key, ` [${inBraces(text, lines)}]`)
  const indent = root ? indentUnder(text, root) : ''
  const at = documentEnd(text, root?.range.end ?? 0)
  const begins = /(?:^\ufeff?|\n)$/.test(text.slice(0, at))
  return { start: at, end: at, text: `${begins ? '' : eol}${indent}${key}:${eol}${inBlock(text, lines, `${indent}  `)}${eol}` }
}

/** Before the `...` that ends a document, else the end of the text. */
function documentEnd(text: string, from: number): number {
  const match = /(?:^|\n)\.\.\.(?=\s|$)/.exec(text.slice(from))
  return match ? from + match.index + match[0].length - '...'.length : text.length
}

function behindLast(text: string, list: ListNode, lines: ItemLines): TextChange {
  const last = list.items.at(-1)!
  if (list.flow) return { start: last.range.end, end: last.range.end, text: `, ${inBraces(text, lines)}` }
  const dash = dashOf(text, list, list.items.length - 1)
  const indent = indentOf(text, dash)
  const at = behindBlock(text, last, indent.length, last.range.end)
  const gap = /^- +$/.exec(text.slice(dash, last.range.start))?.[0] ?? '- '
  return { start: at, end: at, text: `${gapAbove(text, list, dash)}${lineEndOf(text)}${inBlock(text, lines, indent, gap)}` }
}

/** A blank line, where one stands above the last item too, unless that one would take it for its own. */
function gapAbove(text: string, list: ListNode, dash: number): string {
  return list.items.length > 1 && !keepsBlankLines(text, list) && /\n[ \t]*\r?\n *$/.test(text.slice(0, dash)) ? lineEndOf(text) : ''
}

function firstInFlow(text: string, { key, value }: Pair, lines: ItemLines): TextChange {
  const item = inBraces(text, lines)
  if (value.kind === 'list') return { start: value.range.start + 1, end: value.range.start + 1, text: item }
  const colon = behindColon(text, key.range.end)
  if (!isEmpty(value)) return { ...value.range, text: `[${item}]` }
  return colon === undefined ? { start: key.range.end, end: key.range.end, text: `: [${item}]` } : { start: colon, end: colon, text: ` [${item}]` }
}

/** The first item in the place of nothing, `[]` or `null`; what stands behind that on its line stays there. */
function firstInBlock(text: string, root: MapNode, pair: Pair, lines: ItemLines): TextChange[] {
  const { key, value } = pair
  const colon = behindColon(text, key.range.end)
  if (colon === undefined) throw new Refusal(say`\`${key.text}\` has no colon behind it; change it in the text`)
  if (commentsIn(text, value.range.start, value.range.end).length > 0) return [firstInFlow(text, pair, lines)]
  const indent = indentUnder(text, root)
  const body = lineEndOf(text) + inBlock(text, lines, `${indent}  `)
  const start = isEmpty(value) || skipBlank(text, colon) === value.range.start && !text.slice(colon, value.range.start).includes('\n') ? colon : value.range.start
  const end = isEmpty(value) ? colon : value.range.end
  const stop = deeperEnd(text, end, indent.length)
  if (text.slice(end, stop).trim() === '') return [{ start, end: stop, text: body }]
  return [...(start === end ? [] : [{ start, end, text: '' }]), { start: stop, end: stop, text: body }]
}

function isEmpty(node: TreeNode): boolean {
  return node.kind === 'scalar' && node.style === 'empty'
}

function inBraces(text: string, lines: ItemLines): string {
  return `{${lines({ flow: true, indent: '', lineEnd: lineEndOf(text) }).join(', ')}}`
}

function inBlock(text: string, lines: ItemLines, indent: string, dash = '- '): string {
  const lineEnd = lineEndOf(text)
  const below = indent + ' '.repeat(dash.length)
  return lines({ flow: false, indent: below, lineEnd }).map((line, at) => (at === 0 ? indent + dash : below) + line).join(lineEnd)
}
