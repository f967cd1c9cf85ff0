import type { TextChange } from '../../text'
import { say } from '../../words/say'
import type { Entry, Notebook } from '../notebook'
import { holdsShared, pairOf, scalarAt, type ListNode } from '../tree'
import { appendItem } from './appendItem'
import { behindColon, contentEnd, indentOf } from './layout'
import { eraseItem } from './listItems'
import { Refusal, refuseShared } from './refusal'
import { asFigure, asProse, setPath } from './setPath'

/** What a new entry begins with. */
export interface NewEntry {
  id: string
  date: string
  /** The id it comes from, where that is not the entry before. */
  from?: string
  reason?: string
  asFound?: boolean
}

/** Adds an entry behind the last one, written as its neighbours are. */
export function addEntry(notebook: Notebook, entry: NewEntry): TextChange[] {
  return appendItem(notebook, 'entries', (context) => [
    `id: ${asProse(entry.id, context)}`,
    `date: ${asFigure(entry.date, context)}`,
    ...(entry.from === undefined ? [] : [`from: ${asProse(entry.from, context)}`]),
    ...(entry.asFound ? ['as_found: true'] : []),
    ...(entry.reason?.trim() ? [`reason: ${asProse(entry.reason.trim(), context)}`] : []),
  ])
}

/** Renames an entry, and with it every `from` and every accepted finding that names it. */
export function renameEntry(notebook: Notebook, entry: Entry, id: string): TextChange[] {
  const { text } = notebook
  const changes = setPath(text, entry.node, ['id'], id, asProse)
  const old = entry.id?.value
  const isAmbiguous = old !== undefined && notebook.entries.some((other) => other !== entry && other.id?.value === old)
  const froms = old === undefined || isAmbiguous ? [] : notebook.entries.filter((other) => other.from?.value === old)
  // An acceptance names an entry by its key, which is `#3` for one without an id of its own.
  const accepted = notebook.accepted.filter((each) => each.entry === entry.key)
  for (const { map, key } of [...froms.map(({ node }) => ({ map: node, key: 'from' })), ...accepted.map(({ node }) => ({ map: node, key: 'entry' }))]) {
    if (map.kind === 'map' && scalarAt(map, [key])) changes.push(...setPath(text, map, [key], id, asProse))
  }
  return changes
}

/**
 * Takes an entry out, with the comments inside it.
 *
 * @throws Refusal where another entry comes from it: its positions would change silently
 */
export function removeEntry(notebook: Notebook, entry: Entry): TextChange[] {
  const heirs = notebook.entries.filter((other) => other.parent === entry || (entry.id && other.from?.value === entry.id.value))
  const isTransparent = entry.settings.size === 0 && entry.parent === notebook.entries[entry.index - 1]
  if (heirs.some((heir) => heir.from || !isTransparent)) {
    throw new Refusal(say`${heirs.map((heir) => `‘${heir.key}’`).join(', ')} ${heirs.length === 1 ? say('comes') : say('come')} from this entry, and would stand differently without it`)
  }
  const list = pairOf(notebook.root, 'entries')?.value
  if (list?.kind !== 'list' || list.flow) throw new Refusal(say('these entries are written in one line; take it out in the text'))
  refuseShared(list)
  if (holdsShared(entry.node)) throw new Refusal(say('another place stands for a value in this entry; take it out in the text'))
  if (list.items.length === 1) return [emptied(notebook, list)]
  return [eraseItem(notebook.text, list, list.items.indexOf(entry.node))]
}

/** The list's last item gives way to `[]`, so that the next one finds its place. */
function emptied({ text, root }: Notebook, list: ListNode): TextChange {
  const { key } = pairOf(root, 'entries')!
  const colon = behindColon(text, key.range.end)
  const end = contentEnd(list)
  if (colon !== undefined && text.slice(colon, list.range.start).trim() === '') return { start: colon, end, text: ' []' }
  // A comment stands between. A list may begin under its key's first letter; brackets may not.
  const isUnderKey = indentOf(text, list.range.start) === indentOf(text, key.range.start)
  return { start: list.range.start, end, text: isUnderKey ? '  []' : '[]' }
}
