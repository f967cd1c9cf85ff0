import { asFigure, asProse, clearPath, Refusal, setPath } from '../notebook/edits/setPath'
import { clearReading, setReading } from '../notebook/edits/setReading'
import { clearSetting, setSetting } from '../notebook/edits/setSetting'
import { clearList, setBesideList, setList } from '../notebook/edits/setList'
import { findField, listPathOf, pathOf, type Field } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { nodeAt } from '../notebook/tree'
import type { Leg } from '../adjusters/adjuster'
import type { TextChange } from '../text'
import { entryAt } from './entryAt'
import type { GridPlace } from './view'

/** Writes one cell; an empty text clears it. */
export function setOne(notebook: Notebook, place: GridPlace, typed: string): TextChange[] {
  if (typed.trim() === '') return clearOne(notebook, place)
  const { text } = notebook
  const entry = entryAt(notebook, place.column)
  const slot = slotOf(notebook, entry, place.row)
  if (slot) return setSetting(text, entry, slot.id, slot.leg, typed)
  const { path, half } = pathOf(place.row)
  const field = fieldFor(place.row)
  if (half) return setReading(text, entry, path, half, typed)
  if (field.list) return setList(text, entry.node, listPathOf(entry, field), typed)
  const beside = besideList(field)
  if (beside) return setBesideList(text, entry.node, beside, typed.trim(), asFigure)
  const words = field.prose || (field.dimension === undefined && !field.bare)
  return setPath(text, entry.node, path, typed.trim(), words ? asProse : asFigure)
}

/** Takes out what an entry sets in one cell. */
export function clearOne(notebook: Notebook, place: GridPlace): TextChange[] {
  const { text } = notebook
  const entry = entryAt(notebook, place.column)
  const slot = slotOf(notebook, entry, place.row)
  if (slot) return clearSetting(text, entry, slot.id, slot.leg)
  const { path, half } = pathOf(place.row)
  const field = fieldFor(place.row)
  if (field.list) return clearList(text, entry.node, listPathOf(entry, field))
  return half ? clearReading(text, entry, path, half) : clearPath(text, entry.node, path)
}

/** A field that stands in one group with a list, which may be written without the group. */
function besideList({ key }: Field): { path: string[]; listKey: string; key: string } | undefined {
  const { path } = pathOf(key)
  const list = findField(path.slice(0, -1).join('.'))?.list
  return list && { path: path.slice(0, -1), listKey: list.key, key: path.at(-1)! }
}

/** The adjuster and leg of a setting's row. An adjuster's name may hold a slash itself, so both readings are tried. */
function slotOf(notebook: Notebook, entry: Entry, row: string): { id: string; leg?: Leg } | undefined {
  if (!row.startsWith('settings/')) return undefined
  const name = row.slice('settings/'.length)
  if (notebook.adjusters.get(name)?.legs.length === 0) return { id: name }
  const match = /^([^]*)\/(left|right)$/.exec(name)
  const adjuster = match && notebook.adjusters.get(match[1]!)
  const leg = adjuster?.legs.find((each) => each === match![2])
  if (!adjuster || !leg) throw new Refusal('there is no such adjuster any more')
  // Where only one leg carries one, its position needs no leg's name.
  const isAlone = adjuster.legs.length === 1 && nodeAt(entry.node, ['settings', adjuster.id])?.kind !== 'map'
  return isAlone ? { id: adjuster.id } : { id: adjuster.id, leg }
}

function fieldFor(row: string): Field {
  const field = findField(row)
  if (!field) throw new Refusal(row.startsWith('computed/') ? 'this is worked out from the other cells' : 'this row cannot be written')
  return field
}
