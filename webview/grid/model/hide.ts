import { say } from '../strings'
import { nothingHidden, type Hiding, type RowFilter } from './hiding'
import type { KeyedSpot } from './savedState'
import type { Session } from './session'
import { HEADER, LABELS, nearestSpot, type Spot } from './spot'

/** Changes what is hidden and stays on the current cell, or near it where that is hidden now. */
export function hide(session: Session, change: Partial<Hiding>): void {
  const { model } = session
  const { active, anchor } = session.selection
  const [before, from] = [session.keyed(active), session.keyed(anchor)]
  model.hide({ ...model.hiding, ...change })
  const find = (keys: KeyedSpot, spot: Spot) => model.spotOf(keys) ?? nearestSpot(model.ground, spot) ?? session.firstSpot()
  session.selection = { active: find(before, active), anchor: find(from, anchor) }
  session.ports.changed({ kind: 'view' })
  session.ports.changed({ kind: 'selection', reveal: 'withHeading' })
  session.tellSelection()
}

/** How much is left to see, in words. */
export function shownWords({ model: { view, all } }: Session): string {
  const count = (rows: readonly { kind: string }[]) => rows.filter(({ kind }) => kind !== 'group').length
  return say('filter.status', count(view.rows), count(all.rows), view.columns.length, all.columns.length)
}

/** Hides rows that do not pass, or shows them again when that is on already; says what is left. */
export function filterRows(session: Session, rows: RowFilter): void {
  const wanted = session.model.hiding.rows === rows ? 'all' : rows
  hide(session, { rows: wanted })
  session.ports.announce(shownWords(session), 'polite')
}

/** Hides the entries that do not pass, as `entryFilter` reads the words. */
export function filterEntries(session: Session, entries: string): void {
  hide(session, { entries: entries.trim() })
  session.ports.announce(shownWords(session), 'polite')
}

export function showAll(session: Session): void {
  const { pinned, pinnedRows } = session.model.hiding
  hide(session, { ...nothingHidden, pinned, pinnedRows })
  session.ports.announce(shownWords(session), 'polite')
}

export function openFilter(session: Session, open: boolean): void {
  session.filterOpen = open
  session.ports.changed({ kind: 'filter', focus: open })
}

/** Folds the group of the current row away or opens it, and stands on its heading. */
export function toggleGroup(session: Session): void {
  const { model, active } = session
  const group = active.row === HEADER ? undefined : model.groupOf(active.row)
  if (!group) return session.ports.announce(say('group.none'), 'shown')
  const folded = new Set(model.hiding.folded)
  const folds = !folded.delete(group.key)
  if (folds) folded.add(group.key)
  const label = model.spotOf({ row: group.key })
  if (label && active.column !== LABELS && folds) session.select(label)
  hide(session, { folded })
  session.ports.announce(say(folds ? 'group.isFolded' : 'group.isOpen', group.label), 'polite')
}

/** The spot of a place, shown again if it was hidden. Undefined where there is no such place. */
export function uncover(session: Session, place: { row?: string | undefined; column?: string | undefined }): Spot | undefined {
  const { model } = session
  if (!model.isHidden(place)) return model.spotOf(place)
  const folded = new Set(model.hiding.folded)
  folded.delete(groupKeyOf(session, place.row) ?? '')
  hide(session, { folded })
  if (model.isHidden({ row: place.row })) hide(session, { rows: 'all' })
  if (model.isHidden({ column: place.column })) hide(session, { entries: '' })
  return model.spotOf(place)
}

function groupKeyOf({ model: { all } }: Session, row: string | undefined): string | undefined {
  let group: string | undefined
  for (const each of all.rows) {
    if (each.kind === 'group') group = each.key
    if (each.key === row) return group
  }
  return undefined
}
