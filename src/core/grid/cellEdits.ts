import { asFigure, asProse, Refusal, removePath, setPath } from '../notebook/edits/setPath'
import { clearReading, setReading } from '../notebook/edits/setReading'
import { clearSetting, setSetting } from '../notebook/edits/setSetting'
import { findField, pathOf } from '../notebook/fields'
import type { Notebook } from '../notebook/notebook'
import type { Leg } from '../adjusters/adjuster'
import type { TextChange } from '../text'
import { entryAt } from './entryAt'
import type { GridPlace } from './view'

/** Writes one cell; an empty text clears it. */
export function setOne(notebook: Notebook, place: GridPlace, typed: string): TextChange[] {
  if (typed.trim() === '') return clearOne(notebook, place)
  const { text } = notebook
  const entry = entryAt(notebook, place.column)
  const slot = slotOf(notebook, place.row)
  if (slot) return setSetting(text, entry, slot.id, slot.leg, typed)
  const { path, half } = pathOf(place.row)
  const field = fieldFor(place.row)
  if (half) return setReading(text, entry, path, half, typed)
  const words = field.prose || (field.dimension === undefined && field.key !== 'ride.laps')
  return setPath(text, entry.node, path, typed, words ? asProse : asFigure)
}

/** Takes out what an entry sets in one cell. */
export function clearOne(notebook: Notebook, place: GridPlace): TextChange[] {
  const { text } = notebook
  const entry = entryAt(notebook, place.column)
  const slot = slotOf(notebook, place.row)
  if (slot) return clearSetting(text, entry, slot.id, slot.leg)
  const { path, half } = pathOf(place.row)
  fieldFor(place.row)
  return half ? clearReading(text, entry, path, half) : removePath(text, entry.node, path)
}

/** The adjuster and leg of a setting's row. An adjuster's name may hold a slash itself, so both readings are tried. */
function slotOf(notebook: Notebook, row: string): { id: string; leg?: Leg } | undefined {
  if (!row.startsWith('settings/')) return undefined
  const name = row.slice('settings/'.length)
  const plain = notebook.adjusters.get(name)
  if (plain && plain.legs.length === 0) return { id: name }
  const match = /^(.*)\/(left|right)$/.exec(name)
  const adjuster = match && notebook.adjusters.get(match[1]!)
  const leg = adjuster?.legs.find((each) => each === match![2])
  if (!adjuster || !leg) throw new Refusal('there is no such adjuster any more')
  return { id: adjuster.id, leg }
}

function fieldFor(row: string): NonNullable<ReturnType<typeof findField>> {
  const field = findField(row)
  if (!field) throw new Refusal(row.startsWith('computed/') ? 'this is worked out from the other cells' : 'this row cannot be written')
  return field
}
