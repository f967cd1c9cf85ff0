import type { TextChange } from '../../text'
import type { Entry } from '../notebook'
import { nodeAt, type ListNode } from '../tree'
import { contextOf } from './layout'
import { asFigure, Refusal, removePath, setPath } from './setPath'
import { figureText } from './writeScalar'

/** Which of the two lengths of a sag reading: after lifting, or after pushing down. */
export type Half = 'lifted' | 'pushed'

/**
 * Sets one of the two lengths of a sag reading, in whichever way it is written: `128`, `[128, 122]` or
 * `{lifted: 128, pushed: 122}`. A length that stands alone counts as `lifted`.
 */
export function setReading(text: string, entry: Entry, path: readonly string[], half: Half, typed: string): TextChange[] {
  const node = nodeAt(entry.node, path)
  if (node?.alias) throw new Refusal('this value is shared with another place; change it in the text')
  const absent = node === undefined || (node.kind === 'scalar' && node.style === 'empty')
  if (absent) return setPath(text, entry.node, half === 'lifted' ? path : [...path, half], typed, asFigure)
  if (node.kind === 'map') return setPath(text, entry.node, [...path, half], typed, asFigure)
  if (node.kind === 'list') return setInList(text, node, half, typed)
  if (half === 'lifted') return setPath(text, entry.node, path, typed, asFigure)
  const alone = text.slice(node.range.start, node.range.end)
  return [{ ...node.range, text: `[${alone}, ${figure(text, entry, typed)}]` }]
}

function figure(text: string, entry: Entry, typed: string): string {
  return figureText(typed, { ...contextOf(text, entry.node), flow: true })
}

function setInList(text: string, list: ListNode, half: Half, typed: string): TextChange[] {
  const item = list.items[half === 'lifted' ? 0 : 1]
  if (item && item.kind !== 'scalar') throw new Refusal('this reading holds something else; change it in the text')
  const written = figureText(typed, { flow: true, indent: '', lineEnd: '\n' }, item?.style)
  if (item) return text.slice(item.range.start, item.range.end) === written ? [] : [{ ...item.range, text: written }]
  const last = list.items.at(-1)
  if (!list.flow || (half === 'pushed' && !last)) throw new Refusal('write this reading as `[lifted, pushed]` first')
  const at = last ? last.range.end : list.range.start + 1
  return [{ start: at, end: at, text: last ? `, ${written}` : written }]
}

/** Takes out one length of a reading; the other keeps its meaning. */
export function clearReading(text: string, entry: Entry, path: readonly string[], half: Half): TextChange[] {
  const node = nodeAt(entry.node, path)
  if (node?.alias) throw new Refusal('this value is shared with another place; change it in the text')
  if (node?.kind === 'map') return removePath(text, entry.node, [...path, half])
  if (node?.kind !== 'list') return half === 'lifted' ? removePath(text, entry.node, path) : []
  const other = node.items[half === 'lifted' ? 1 : 0]
  const gone = node.items[half === 'lifted' ? 0 : 1]
  if (!gone) return []
  if (!other) return removePath(text, entry.node, path)
  const inside = text.slice(node.range.start, node.range.end)
  if (!node.flow || inside.includes('#')) throw new Refusal('a comment stands in this reading; change it in the text')
  const kept = text.slice(other.range.start, other.range.end)
  return [{ ...node.range, text: half === 'pushed' ? kept : `{pushed: ${kept}}` }]
}

