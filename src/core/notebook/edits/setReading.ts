import { lineEndOf, type TextChange } from '../../text'
import { say } from '../../words/say'
import type { Entry } from '../notebook'
import { holdsShared, nodeAt, type ListNode, type MapNode, type TreeNode } from '../tree'
import { commentsIn } from './comments'
import { behindBlock, contextOf, indentOf, isNothing } from './layout'
import { Refusal, refuseFixed, refuseMarked, refuseShared, sharedElsewhere } from './refusal'
import { dashOf } from './listItems'
import { eraseLines } from './removePair'
import { asFigure, clearPath, removePath, setPath } from './setPath'
import { replaceScalar } from './replaceScalar'
import { figureText, inFlow } from './writeScalar'

/** Which of the two lengths of a sag reading: after lifting, or after pushing down. */
export type Half = 'lifted' | 'pushed'

/**
 * Sets one of the two lengths of a sag reading, in whichever way it is written: `128`, `[128, 122]` or
 * `{lifted: 128, pushed: 122}`. A length that stands alone counts as `lifted`.
 */
export function setReading(text: string, entry: Entry, path: readonly string[], half: Half, typed: string): TextChange[] {
  const node = ownNode(text, entry.node, path)
  if (node === undefined || isNothing(node)) return setPath(text, entry.node, half === 'lifted' ? path : [...path, half], typed, asFigure)
  if (node.kind === 'map') return setPath(text, entry.node, [...path, half], typed, asFigure)
  if (node.kind === 'list') return setInList(text, node, half, typed)
  if (half === 'lifted') return setPath(text, entry.node, path, typed, asFigure)
  refuseMarked(node)
  return replaceScalar(text, node, `[${inFlow(text, node)}, ${figure(text, entry, typed)}]`)
}

/** The node under a path, if nothing on the way stands for a value elsewhere. */
function ownNode(text: string, root: MapNode, path: readonly string[]): TreeNode | undefined {
  for (let depth = 0; depth < path.length; depth++) {
    const node = nodeAt(root, path.slice(0, depth))
    if (node?.kind === 'map') refuseFixed(text, node)
  }
  const found = nodeAt(root, path)
  if (found?.kind === 'list') refuseShared(found)
  return found
}

function figure(text: string, entry: Entry, typed: string): string {
  return figureText(typed, { ...contextOf(text, entry.node), flow: true })
}

function setInList(text: string, list: ListNode, half: Half, typed: string): TextChange[] {
  const item = list.items[half === 'lifted' ? 0 : 1]
  const written = figureText(typed, { flow: true, indent: '', lineEnd: '\n' }, item?.kind === 'scalar' && !item.alias ? item.style : undefined)
  if (item) {
    if (item.kind !== 'scalar' || item.style === 'empty') throw new Refusal(say('this reading holds something else; change it in the text'))
    if (item.text === typed.trim()) return []
    refuseMarked(item)
    return replaceScalar(text, item, written)
  }
  const last = list.items.at(-1)
  if (last) return [addToList(text, list, last, written)]
  if (half === 'lifted') return [{ start: list.range.start + 1, end: list.range.start + 1, text: written }]
  if (commentsIn(text, list.range.start, list.range.end).length > 0) throw new Refusal(say('a comment stands in this reading; change it in the text'))
  return [{ ...list.range, text: `{pushed: ${written}}` }]
}

function addToList(text: string, list: ListNode, last: TreeNode, written: string): TextChange {
  if (list.flow) return { start: last.range.end, end: last.range.end, text: `, ${written}` }
  const indent = indentOf(text, dashOf(text, list, 0))
  const at = behindBlock(text, last, indent.length)
  return { start: at, end: at, text: `${lineEndOf(text)}${indent}- ${written}` }
}

/** Takes out one length of a reading; the other keeps its meaning. */
export function clearReading(text: string, entry: Entry, path: readonly string[], half: Half): TextChange[] {
  const node = ownNode(text, entry.node, path)
  if (node?.kind === 'map') return clearPath(text, entry.node, [...path, half])
  if (node?.kind === 'list') return clearInList(text, entry, path, node, half)
  return half === 'lifted' ? clearPath(text, entry.node, path) : []
}

function clearInList(text: string, entry: Entry, path: readonly string[], list: ListNode, half: Half): TextChange[] {
  const there = (node: TreeNode | undefined) => (node?.kind === 'scalar' && node.value === null ? undefined : node)
  const [lifted, pushed] = [there(list.items[0]), there(list.items[1])]
  const [gone, other] = half === 'lifted' ? [lifted, pushed] : [pushed, lifted]
  if (!gone) return []
  if (list.items.length > 2 || gone.kind !== 'scalar' || (other && other.kind !== 'scalar')) throw new Refusal(say('this reading holds something else; change it in the text'))
  if (!other) return removePath(text, entry.node, path)
  if (holdsShared(list)) throw sharedElsewhere()
  refuseMarked(other)
  if (!list.flow && half === 'pushed') return [eraseLines(text, dashOf(text, list, 1), gone.range.end)]
  if (!list.flow || commentsIn(text, list.range.start, list.range.end).length > 0) throw new Refusal(say('write this reading as `{lifted: …, pushed: …}` first, in the text'))
  const kept = text.slice(other.range.start, other.range.end)
  return [{ ...list.range, text: half === 'pushed' ? kept : `{pushed: ${kept}}` }]
}
