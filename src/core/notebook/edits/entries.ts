import type { TextChange } from '../../text'
import type { Entry, Notebook } from '../notebook'
import { pairOf, scalarAt } from '../tree'
import { appendItem } from './appendItem'
import { contentEnd, dashBefore } from './layout'
import { eraseLines } from './removePair'
import { asFigure, asProse, Refusal, removePath, setPath } from './setPath'

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
  if (old === undefined || notebook.entries.some((other) => other !== entry && other.id?.value === old)) return changes
  const nodes = notebook.entries.filter((other) => other.from?.value === old).map((other) => ({ map: other.node, key: 'from' }))
  const accepted = notebook.accepted.filter((each) => each.entry === old).map((each) => ({ map: each.node, key: 'entry' }))
  for (const { map, key } of [...nodes, ...accepted]) {
    if (map.kind === 'map' && scalarAt(map, [key])) changes.push(...setPath(text, map, [key], id, asProse))
  }
  return changes
}

/**
 * Takes an entry out.
 *
 * @throws Refusal where another entry names it as the one it comes from: its positions would change silently
 */
export function removeEntry(notebook: Notebook, entry: Entry): TextChange[] {
  const heirs = notebook.entries.filter((other) => other.parent === entry)
  if (heirs.length > 0 && entry.state.size > 0 && entry.settings.size > 0) {
    throw new Refusal(`${heirs.map((heir) => heir.key).join(', ')} comes from this entry, and would stand differently without it`)
  }
  const list = pairOf(notebook.root, 'entries')?.value
  if (list?.kind !== 'list' || list.flow) throw new Refusal('these entries are written in one line; take it out in the text')
  if (list.items.length === 1) return removePath(notebook.text, notebook.root!, ['entries'])
  const start = dashBefore(notebook.text, entry.node.range.start)
  return [eraseLines(notebook.text, start, contentEnd(entry.node))]
}
