import type { Gesture } from '../../core/grid/gesture'
import { count, kindOf, listOf, group, maybe, oneOf, text, truth, whole, type Shape } from './shapes'

const place = { column: text, row: text }
/** A new entry. */
const entry = { date: text, id: maybe(text), reason: maybe(text) }

const gestures: Record<Gesture['kind'], Record<string, Shape>> = {
  setCell: { ...place, text },
  setCells: { cells: listOf(group({ ...place, text })), partly: maybe(truth) },
  setBothLegs: { ...place, text },
  nudge: { cells: listOf(group(place)), toward: oneOf('more', 'less') },
  clearCells: { cells: listOf(group(place)), partly: maybe(truth) },
  setHeader: { column: text, field: oneOf('id', 'date', 'reason'), text },
  addEntry: { ...entry, after: maybe(text) },
  returnTo: { ...entry, column: text, reason: text },
  removeEntry: { column: text },
  duplicateEntry: { column: text, date: text },
  insertEntry: { ...entry, column: text },
  moveEntry: { column: text, by: whole },
  annotate: { ...place, text },
  applyFix: { finding: count, fix: count },
  acceptFinding: { finding: count, reason: text },
  addAdjuster: { id: text, on: text, legs: listOf(text), controls: text, counts: maybe(text), range: maybe(text) },
  removeAdjuster: { id: text, withPositions: truth },
  moveAdjuster: { id: text, toward: oneOf('up', 'down') },
  duplicateAdjuster: { id: text },
  begin: { start: text, date: text, name: maybe(text) },
}

/** Whether a value is a gesture that can be tried. */
export const isGesture: Shape = kindOf('kind', gestures)
