import { lineEnd, lineEndOf, lineStart, type TextChange } from '../../text'
import { say } from '../../words/say'
import { holdsShared, nodeAt, type ListNode, type MapNode, type TreeNode } from '../tree'
import { commentsIn } from './comments'
import { behindBlock, indentOf, isFirstOnLine, isNothing } from './layout'
import { dashOf } from './listItems'
import { Refusal, refuseFixed, refuseMarked, refuseShared, sharedElsewhere } from './refusal'
import { eraseWholeLines } from './removePair'
import { replaceScalar } from './replaceScalar'
import { removePath, setPath, type Writer } from './setPath'
import { figureText } from './writeScalar'

/** More than anyone measures one after the other. */
const mostItems = 200
const flow = { flow: true, indent: '', lineEnd: '\n' } as const

/**
 * The items of a list as someone types it: `128, 122`, `[128, 122]`, or plain numbers with blanks between. A comma always
 * parts two of them.
 *
 * @throws Refusal where one of them is missing, or there are too many
 */
export function typedItems(typed: string): string[] {
  const words = typed.trim().replace(/^\[([^]*)\]$/, '$1').trim().replace(/,$/, '')
  const isBlankParted = /^[+\-−]?[\d.]+(?:\s+[+\-−]?[\d.]+)+$/.test(words)
  const items = (isBlankParted ? words.split(/\s+/) : words.split(',')).map((item) => item.trim().replace(/\s+/g, ' '))
  if (items.some((item) => item === '')) throw new Refusal(say('one of these is missing; write them with commas between, such as 40, 14, 5'))
  if (items.length > mostItems) throw new Refusal(say`these are more than ${mostItems}; write them in the text`)
  return items
}

/**
 * Writes a list of figures under a path, in whichever way it is written: only items that differ are replaced, new ones go
 * behind the last, and what is too much is taken from the end. Comments stay where they are.
 *
 * @throws Refusal where an anchor or a comment is in the way, or something of another shape stands there
 */
export function setList(text: string, root: MapNode, path: readonly string[], typed: string): TextChange[] {
  const items = typedItems(typed)
  refuseOnTheWay(text, root, path)
  const node = nodeAt(root, path)
  if (node?.kind === 'list' && node.items.length > 0) return changeItems(text, node, items)
  if (node?.kind === 'list') return fillEmpty(node, items)
  const asList: Writer = () => `[${items.map((item) => figureText(item, flow)).join(', ')}]`
  return setPath(text, root, path, `[${items.join(', ')}]`, asList)
}

function refuseOnTheWay(text: string, root: MapNode, path: readonly string[]): void {
  for (let depth = 0; depth < path.length; depth++) {
    const node = nodeAt(root, path.slice(0, depth))
    if (node?.kind === 'map') refuseFixed(text, node)
  }
  const found = nodeAt(root, path)
  if (found?.kind === 'list') refuseShared(found)
}

function fillEmpty(list: ListNode, items: readonly string[]): TextChange[] {
  if (!list.flow) throw new Refusal(say('this list is written in a way that cannot be continued; change it in the text'))
  const at = list.range.start + 1
  return [{ start: at, end: at, text: items.map((item) => figureText(item, flow)).join(', ') }]
}

function changeItems(text: string, list: ListNode, items: readonly string[]): TextChange[] {
  const changed = list.items.slice(0, items.length).flatMap((node, at) => changeItem(text, node, items[at]!))
  const more = items.slice(list.items.length)
  if (more.length > 0) return [...changed, addItems(text, list, more)]
  return [...changed, ...(items.length < list.items.length ? dropItems(text, list, items.length) : [])]
}

function changeItem(text: string, node: TreeNode, item: string): TextChange[] {
  if (node.kind !== 'scalar' || (node.style === 'empty' && !node.alias)) throw new Refusal(say('this list holds something else; change it in the text'))
  if (node.text.trim() === item && !isNothing(node)) return []
  refuseMarked(node)
  return replaceScalar(text, node, figureText(item, flow, node.alias ? undefined : node.style))
}

function addItems(text: string, list: ListNode, items: readonly string[]): TextChange {
  const written = items.map((item) => figureText(item, flow))
  const last = list.items.at(-1)!
  if (list.flow) return { start: last.range.end, end: last.range.end, text: written.map((item) => `, ${item}`).join('') }
  const indent = indentOf(text, dashOf(text, list, 0))
  const at = behindBlock(text, last, indent.length)
  return { start: at, end: at, text: written.map((item) => `${lineEndOf(text)}${indent}- ${item}`).join('') }
}

/** Takes the items from `from` on out of a list that keeps at least one. */
function dropItems(text: string, list: ListNode, from: number): TextChange[] {
  const gone = list.items.slice(from)
  if (gone.some((node) => node.kind !== 'scalar' || node.marked || holdsShared(node))) throw new Refusal(say('this list holds something else; change it in the text'))
  const start = list.items[from - 1]!.range.end
  const end = gone.at(-1)!.range.end
  const stop = list.flow ? end : text.indexOf('\n', end) < 0 ? text.length : text.indexOf('\n', end)
  if (commentsIn(text, start, list.flow ? end : stop).length > commentsIn(text, start, firstLineEnd(text, list, from)).length) throw new Refusal(say('a comment stands beside what would be taken out; change it in the text'))
  if (list.flow) return [{ start, end, text: '' }]
  const dash = dashOf(text, list, from)
  if (!isFirstOnLine(text, dash)) throw new Refusal(say('this list is written in a way that cannot be continued; change it in the text'))
  return [eraseWholeLines(text, dash, end)]
}

/** In a block list, the end of the line of the last item that stays: a comment behind it is its own. */
function firstLineEnd(text: string, list: ListNode, from: number): number {
  const { end } = list.items[from - 1]!.range
  if (list.flow) return end
  const at = text.indexOf('\n', end)
  return at < 0 ? text.length : at
}

/** Takes a list out with its key. @throws Refusal where another place stands for something in it */
export function clearList(text: string, root: MapNode, path: readonly string[]): TextChange[] {
  refuseOnTheWay(text, root, path)
  const node = nodeAt(root, path)
  if (node === undefined || isNothing(node)) return []
  if (node.kind === 'map') throw new Refusal(say`\`${path.at(-1)!}\` holds a group of values here; change it in the text`)
  if (holdsShared(node)) throw sharedElsewhere()
  return removePath(text, root, path)
}

/**
 * Sets a value beside a list that stands alone, which takes the name `listKey` for it: `[40, 6]` becomes
 * `{heights: [40, 6], seconds: 0.6}`, and the items of a block list stay on their lines.
 */
export function setBesideList(text: string, root: MapNode, { path, listKey, key }: { path: readonly string[]; listKey: string; key: string }, typed: string, write: Writer): TextChange[] {
  refuseOnTheWay(text, root, path)
  const node = nodeAt(root, path)
  if (node?.kind !== 'list') return setPath(text, root, [...path, key], typed, write)
  if (node.marked) throw new Refusal(say('an anchor or a tag stands before this list; change it in the text'))
  const written = write(typed, flow)
  if (node.flow) return [{ start: node.range.start, end: node.range.start, text: `{${listKey}: ` }, { start: node.range.end, end: node.range.end, text: `, ${key}: ${written}}` }]
  const dash = dashOf(text, node, 0)
  const indent = indentOf(text, dash)
  const eol = lineEndOf(text)
  const at = behindBlock(text, node.items.at(-1)!, indent.length)
  // Items may stand as far left as their key, where `listKey` would become its neighbour: all of it goes further in then.
  const parent = nodeAt(root, path.slice(0, -1))
  const above = parent?.kind === 'map' ? parent.pairs.find((pair) => pair.value === node)?.key.range.start : undefined
  const inward = above !== undefined && indent.length <= above - lineStart(text, above) ? '  ' : ''
  const deeper = inward === '' ? [] : linesBetween(text, dash, at).map((start) => ({ start, end: start, text: inward }))
  return [{ start: dash, end: dash, text: `${inward}${listKey}:${eol}${indent}${inward}` }, ...deeper, { start: at, end: at, text: `${eol}${indent}${inward}${key}: ${written}` }]
}

/** Where the lines begin that follow within a stretch and hold something. */
function linesBetween(text: string, start: number, end: number): number[] {
  const found: number[] = []
  for (let at = text.indexOf('\n', start) + 1; at > 0 && at < end; at = text.indexOf('\n', at) + 1) if (text.slice(at, lineEnd(text, at)).trim() !== '') found.push(at)
  return found
}
