import { asFigure, asProse, clearPath, Refusal, setPath } from '../notebook/edits/setPath'
import { clearReading, setReading } from '../notebook/edits/setReading'
import { clearSetting, setSetting } from '../notebook/edits/setSetting'
import { clearList, setBesideList, setList } from '../notebook/edits/setList'
import { findField, listPathOf, pathOf, type Field } from '../notebook/fields'
import type { Notebook } from '../notebook/notebook'
import type { TextChange } from '../text'
import { say } from '../words/say'
import { entryAt } from './entryAt'
import { slotOf } from './slotOf'
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

function fieldFor(row: string): Field {
  const field = findField(row)
  if (!field) throw new Refusal(row.startsWith('computed/') ? say('this is worked out from the other cells') : say('this row cannot be written'))
  return field
}
