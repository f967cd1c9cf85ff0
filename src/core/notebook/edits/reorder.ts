import { applyChanges, lineEndOf, lineStart, type TextChange } from '../../text'
import { say } from '../../words/say'
import type { Entry, Notebook } from '../notebook'
import { readNotebook } from '../readNotebook'
import { pairOf, type ListNode } from '../tree'
import { carriedDown, carriedUp, gapAbove, leadOf, type Item } from './carry'
import { composeChanges } from './composeChanges'
import { contentEnd, deeperEnd, indentOf, keepsBlankLines } from './layout'
import { dashOf } from './listItems'
import { Refusal, refuseShared } from './refusal'
import { asFigure, asProse, clearPath, setPath } from './setPath'

/**
 * Puts an entry so many places later in the file, or earlier where `by` is below zero. Every entry goes on coming from what it
 * came from. What stands between entries stays between them.
 */
export function moveEntry(notebook: Notebook, entry: Entry, by: number): TextChange[] {
  const { index } = entry
  const to = index + by
  if (by === 0) return []
  if (!notebook.entries[to]) throw new Refusal(by < 0 ? say`‘${entry.key}’ is the first entry already` : say`‘${entry.key}’ is the last entry already`)
  const top = Math.min(index, to)
  const move = (text: string, list: ListNode): TextChange[] => {
    const items = notebook.entries.slice(top, Math.max(index, to) + 1).map((each) => itemOf(text, list, each.index))
    if (items.some(({ ownsBlanks }) => ownsBlanks)) throw new Refusal(say('a text at the end of one of these entries owns the blank lines below it; change it in the text'))
    return by < 0 ? carriedUp(text, items) : carriedDown(text, items)
  }
  return rearranged(notebook, move, (order) => order.splice(to, 0, ...order.splice(index, 1)))
}

/** What a copy of an entry is called and dated. */
export interface Named {
  id: string
  date: string
}

/**
 * Writes an entry once more behind itself, with all that it says but its name, its date, and that the machine was found
 * so or is measured from it. Nothing stands anywhere else by it.
 */
export function duplicateEntry(notebook: Notebook, entry: Entry, { id, date }: Named): TextChange[] {
  const insert = (text: string, list: ListNode): TextChange[] => {
    const { start, end, ownsBlanks, gap } = itemOf(text, list, entry.index)
    if (ownsBlanks) throw new Refusal(say('a text at the end of this entry owns the blank lines below it; copy it in the text'))
    return [{ start: end, end, text: `${lineEndOf(text)}${gap}${text.slice(start, end)}` }]
  }
  const copied = rearranged(notebook, insert, (order) => order.splice(entry.index + 1, 0, undefined))
  const steps = [copied]
  let now = readNotebook(applyChanges(notebook.text, copied))
  const copy = () => now.entries[entry.index + 1]!.node
  const go = (change: (text: string) => TextChange[]) => {
    const changes = change(now.text)
    if (changes.length === 0) return
    steps.push(changes)
    now = readNotebook(applyChanges(now.text, changes))
  }
  go((text) => setPath(text, copy(), ['id'], id, asProse))
  go((text) => setPath(text, copy(), ['date'], date, asFigure))
  go((text) => clearPath(text, copy(), ['as_found']))
  go((text) => clearPath(text, copy(), ['baseline']))
  return composeChanges(notebook.text.length, steps)
}

/** Puts a new entry behind another one, from which it comes. */
export function insertEntry(notebook: Notebook, after: Entry, { id, date, reason }: Named & { reason?: string }): TextChange[] {
  const insert = (text: string, list: ListNode): TextChange[] => {
    const { start, end, ownsBlanks, gap } = itemOf(text, list, after.index)
    if (ownsBlanks) throw new Refusal(say('a text at the end of this entry owns the blank lines below it; insert it in the text'))
    const indent = /^ *- +/.exec(text.slice(start, end))?.[0] ?? `${/^ */.exec(text.slice(start, end))![0]}- `
    const context = { flow: false, indent: ' '.repeat(indent.length), lineEnd: lineEndOf(text) }
    const lines = [`id: ${asProse(id, context)}`, `date: ${asFigure(date, context)}`, ...(reason?.trim() ? [`reason: ${asProse(reason.trim(), context)}`] : [])]
    return [{ start: end, end, text: `${context.lineEnd}${gap}${indent}${lines.join(context.lineEnd + context.indent)}` }]
  }
  return rearranged(notebook, insert, (order) => order.splice(after.index + 1, 0, undefined))
}

function itemOf(text: string, list: ListNode, index: number): Item {
  const dash = dashOf(text, list, index)
  const node = list.items[index]!
  const start = lineStart(text, dash)
  return {
    start, lead: leadOf(text, start, dash - start), end: deeperEnd(text, contentEnd(node), indentOf(text, dash).length),
    ownsBlanks: keepsBlankLines(text, node), gap: index > 0 ? gapAbove(text, start) : '',
  }
}

/**
 * Changes the order of the file, and names in `from` what an entry comes from wherever the one before it is another one
 * by then. `reorder` does to a list of the entries what `change` does to the text; a new one is `undefined` in it.
 *
 * @throws Refusal where what an entry comes from cannot be named, or the result would not stand as before
 */
function rearranged(notebook: Notebook, change: (text: string, list: ListNode) => TextChange[], reorder: (order: (Entry | undefined)[]) => unknown): TextChange[] {
  const { text, entries } = notebook
  const list = pairOf(notebook.root, 'entries')?.value
  if (list?.kind !== 'list' || list.flow) throw new Refusal(say('these entries are written in one line; change their order in the text'))
  refuseShared(list)
  if (list.items.length !== entries.length) throw new Refusal(say('something among the entries is none; mend it in the text first'))
  if (notebook.accepted.some(({ entry }) => /^#\d+$/.test(entry ?? ''))) {
    throw new Refusal(say('an accepted finding names an entry by its place; give that entry an id and name it by that first'))
  }
  const order: (Entry | undefined)[] = [...entries]
  reorder(order)
  const toName = order.flatMap((entry, at) => (entry && !entry.from && order[at - 1] !== entry.parent ? [entry] : []))
  const named = composeNames(notebook, toName)
  const now = readNotebook(applyChanges(text, named))
  const nowList = pairOf(now.root, 'entries')?.value as ListNode
  const moved = change(now.text, nowList)
  const changes = named.length === 0 ? moved : composeChanges(text.length, [named, moved])
  refuseStandingElse(notebook, changes, order)
  return changes
}

function composeNames(notebook: Notebook, toName: readonly Entry[]): TextChange[] {
  return toName.flatMap((entry) => {
    const { parent } = entry
    if (!parent) throw new Refusal(say`‘${entry.key}’ begins the history and comes from no entry, so it stays where it is`)
    const isUnique = parent.id && notebook.entries.filter(({ id }) => id?.value === parent.id!.value).length === 1
    if (!isUnique) throw new Refusal(say`‘${entry.key}’ comes from ‘${parent.key}’, which has no id of its own to be named by; give it one first`)
    return setPath(notebook.text, entry.node, ['from'], parent.id!.value, asProse)
  })
}

/** The order as it is read must be the one that was meant, each entry standing where it stood: an anchor may have come behind its alias. */
function refuseStandingElse(notebook: Notebook, changes: readonly TextChange[], order: readonly (Entry | undefined)[]): void {
  const after = readNotebook(applyChanges(notebook.text, changes))
  const isKept = !after.broken && after.entries.length === order.length && order.every((entry, at) => {
    const now = after.entries[at]!
    return !entry || (now.id?.value === entry.id?.value && stateText(now) === stateText(entry) && now.parent?.id?.value === entry.parent?.id?.value)
  })
  if (!isKept) throw new Refusal(say('entries would stand differently then, because values are shared between them; change the order in the text'))
}

const stateText = ({ state }: Entry) => JSON.stringify([...state].map(([slot, { setting }]) => [slot, setting.node.text]).sort())
