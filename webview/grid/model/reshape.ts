import type { Gesture } from '../../../src/core/grid/gesture'
import { say } from '../strings'
import { whyNotEdited } from './editing'
import { layFill } from './fill'
import { printDay } from './nextEntry'
import { isRange, spotsOf } from './selection'
import { sentence } from './sentence'
import type { Session } from './session'
import { commitEdit, sendAround, sendTexts } from './write'

/** Why nothing can be written as a whole, said beside the current cell; true where it can. */
function canWrite(session: Session): boolean {
  if (session.model.writable) return true
  session.ports.announce(whyNotEdited(session.model, session.active) ?? say('refuse.broken'), 'shown')
  return false
}

/** Moves the selected positions by a count towards more or less of what they control. */
export function nudgeSelected(session: Session, toward: 'more' | 'less'): void {
  const { model } = session
  if (!canWrite(session)) return
  const spots = spotsOf(model.ground, session.selection).filter(({ row }) => !isRange(session.selection) || model.row(row)!.kind === 'setting')
  const cells = spots.flatMap((spot) => model.placeOf(spot) ?? [])
  if (cells.length === 0 || model.row(spots[0]!.row)!.kind !== 'setting') return session.ports.announce(say('refuse.noPosition'), 'shown')
  session.tellCell = true
  session.outbox.send({ kind: 'nudge', cells, toward }, ({ refused }) => {
    if (refused === undefined) return
    session.tellCell = false
    session.ports.announce(sentence(refused), 'shown')
  })
}

/** Fills the selection from its first column or row, as one gesture. */
export function fillSelected(session: Session, way: 'right' | 'down'): void {
  if (!canWrite(session)) return
  const filled = layFill(session.model, session.selection, way)
  if (!filled) return session.ports.announce(say(way === 'right' ? 'fill.noColumn' : 'fill.noRow'), 'shown')
  sendAround(session, filled.cells, filled.skipped)
  if (filled.cells.length === 0) return
  session.ports.announce(say('filled', filled.cells.length), 'polite')
}

/** The current position goes to the other leg as well. */
export function setBothLegs(session: Session, text = session.model.cell(session.active)?.text ?? ''): void {
  const { model, activePlace } = session
  if (!canWrite(session)) return
  const legs = activePlace ? legsOf(session, activePlace.row) : []
  if (!activePlace || legs.length < 2) return session.ports.announce(say('refuse.oneLeg'), 'shown')
  const cells = legs.map((row) => ({ row, column: activePlace.column, text }))
  sendTexts(session, cells, { as: { kind: 'setBothLegs', ...activePlace, text } })
  session.ports.announce(say('legs.set', model.row(session.active.row)!.label, text || say('cell.empty')), 'polite')
}

/** Closes the cell and writes what was typed into all selected cells, or into both legs of the only one. */
export function commitToAll(session: Session): void {
  const { editing, model } = session
  if (!editing) return
  const { text, column, row } = editing
  const isSeveral = isRange(session.selection)
  if (!isSeveral && legsOf(session, row).length < 2) return commitEdit(session)
  session.editing = undefined
  session.ports.changed({ kind: 'editing' })
  if (!isSeveral) return setBothLegs(session, text)
  const spots = spotsOf(model.ground, session.selection)
  const placesOf = (isComputed: boolean) => spots.flatMap((spot) => ((model.row(spot.row)!.kind === 'computed') === isComputed ? (model.placeOf(spot) ?? []) : []))
  const cells = placesOf(false)
  sendAround(session, (cells.length > 0 ? cells : [{ row, column }]).map((place) => ({ ...place, text })), placesOf(true))
  session.ports.announce(say('filled', cells.length), 'polite')
}

/** The rows of both legs of a pair; one where there is no pair. */
export function legsOf({ model }: Session, row: string): string[] {
  const [, pair] = /^(settings\/.*)\/(?:left|right)$/.exec(row) ?? []
  return pair === undefined ? [] : [`${pair}/left`, `${pair}/right`].filter((each) => model.spotOf({ row: each }))
}

const entryGestures = {
  duplicateEntry: (column: string): Gesture => ({ kind: 'duplicateEntry', column, date: printDay(new Date()) }),
  insertEntry: (column: string): Gesture => ({ kind: 'insertEntry', column, date: printDay(new Date()) }),
  removeEntry: (column: string): Gesture => ({ kind: 'removeEntry', column }),
  moveEntryLeft: (column: string): Gesture => ({ kind: 'moveEntry', column, by: -1 }),
  moveEntryRight: (column: string): Gesture => ({ kind: 'moveEntry', column, by: 1 }),
}

export type EntryCommand = keyof typeof entryGestures

/** Does something with the current entry as a whole; says what was done, or why it was not. */
export function changeEntry(session: Session, command: EntryCommand): void {
  const column = session.model.column(session.active.column)
  if (!canWrite(session)) return
  if (!column) return session.ports.announce(say('refuse.noEntry'), 'shown')
  session.outbox.send(entryGestures[command](column.key), ({ refused }) => {
    session.ports.announce(refused === undefined ? say(`did.${command}`, column.id || column.key) : sentence(refused), refused === undefined ? 'polite' : 'shown')
  })
}

/** Puts an entry before the one at `before`, or behind all that are shown where there is none there. Both by their places among those. */
export function moveEntryTo(session: Session, column: number, before: number): void {
  const { model } = session
  const entry = model.column(column)
  if (!entry || !canWrite(session)) return
  const from = model.inAll(column)
  const target = before < model.view.columns.length ? model.inAll(before) : model.inAll(model.view.columns.length - 1) + 1
  const by = target > from ? target - 1 - from : target - from
  if (by === 0) return
  session.outbox.send({ kind: 'moveEntry', column: entry.key, by }, ({ refused }) => {
    session.ports.announce(refused === undefined ? say('did.moveEntry', entry.id || entry.key) : sentence(refused), refused === undefined ? 'polite' : 'shown')
  })
}

/** Takes the adjuster of the current row out; where it is in use, asks first. */
export async function removeAdjuster(session: Session): Promise<void> {
  const { model, active } = session
  const row = model.row(active.row)
  if (!canWrite(session)) return
  if (row?.kind !== 'setting') return session.ports.announce(say('refuse.noAdjuster'), 'shown')
  const id = adjusterOf(session, row.key)
  const { refused } = await session.ask({ kind: 'removeAdjuster', id, withPositions: false })
  if (refused === undefined) return session.ports.announce(say('did.removeAdjuster', row.label), 'polite')
  session.ports.changed({ kind: 'confirm', title: say('form.adjuster.title', row.label), about: `${sentence(refused)} ${say('form.adjuster.about')}`, submit: say('form.adjuster.remove'), gesture: { kind: 'removeAdjuster', id, withPositions: true } })
}

const adjusterGestures = {
  duplicateAdjuster: (id: string): Gesture => ({ kind: 'duplicateAdjuster', id }),
  moveAdjusterUp: (id: string): Gesture => ({ kind: 'moveAdjuster', id, toward: 'up' }),
  moveAdjusterDown: (id: string): Gesture => ({ kind: 'moveAdjuster', id, toward: 'down' }),
}

/** Does something with the adjuster of the current row; says what was done, or why it was not. */
export function changeAdjuster(session: Session, command: keyof typeof adjusterGestures): void {
  const row = session.model.row(session.active.row)
  if (!canWrite(session)) return
  if (row?.kind !== 'setting') return session.ports.announce(say('refuse.noAdjusterHere'), 'shown')
  session.outbox.send(adjusterGestures[command](adjusterOf(session, row.key)), ({ refused }) => {
    session.ports.announce(refused === undefined ? say(`did.${command}`, row.label) : sentence(refused), refused === undefined ? 'polite' : 'shown')
  })
}

/** A row of a leg carries the leg's name, unless the adjuster's own name ends like one. */
function adjusterOf({ model }: Session, row: string): string {
  const name = row.slice('settings/'.length)
  const { detail } = model.row(model.spotOf({ row })!.row)!
  return detail && name.endsWith(`/${detail}`) ? name.slice(0, -detail.length - 1) : name
}
