import type { LeftOut } from '../../../src/core/grid/applyGesture'
import type { Gesture } from '../../../src/core/grid/gesture'
import type { GridPlace } from '../../../src/core/grid/view'
import { say } from '../strings'
import { spotName } from './describe'
import { isWorthSending, whyNotEdited } from './editing'
import { toggleGroup } from './hide'
import type { Answer } from './outbox'
import { layPaste } from './paste'
import { blockOf, spotsOf } from './selection'
import type { FormName, Session } from './session'
import { HEADER, LABELS } from './spot'
import { printTsv, readTsv } from './tsv'

/** How long, in ms, a written text stays on show by itself when no view has come that has it. */
const settleMs = 600

/** How many cells that were left out are named one by one. */
const mostNamed = 8

/** Opens the current cell for typing, or the form of its header; where neither may be, says why. */
export function beginEdit(session: Session, how: 'replace' | 'edit', caret: 'all' | 'end'): void {
  const { model, active, activePlace } = session
  if (active.row === HEADER && active.column !== LABELS) return how === 'edit' ? openForm(session, 'header') : undefined
  if (how === 'edit' && active.column === LABELS && model.row(active.row)?.kind === 'group') return toggleGroup(session)
  const why = whyNotEdited(model, active)
  if (why !== undefined || !activePlace) return session.ports.announce(why ?? say('refuse.noEntry'), 'shown')
  const before = model.cell(active)!.text
  const text = how === 'replace' ? '' : (session.pending.at(activePlace)?.text ?? before)
  session.editing = { ...activePlace, how, caret, text, before, touched: text !== before && how === 'edit' }
  session.ports.changed({ kind: 'editing' })
}

/** What is in the input now. */
export function draft(session: Session, text: string): void {
  if (session.editing) Object.assign(session.editing, { text, touched: true })
}

/** Closes the cell and sends what was typed, if it says anything. */
export function commitEdit(session: Session): void {
  sendOpenCell(session)
  session.editing = undefined
  session.ports.changed({ kind: 'editing' })
}

/** Sends what was typed so far and leaves the cell open. */
export function sendOpenCell(session: Session): void {
  const { editing, model } = session
  if (!editing || !isWorthSending(model, editing)) return
  const { row, column, text } = editing
  const spot = model.spotOf({ row, column })
  const why = spot && whyNotEdited(model, spot)
  if (!spot) refuse(session, { row, column }, text, say('refused.unsent'))
  else if (why !== undefined) refuse(session, { row, column }, text, why)
  else sendTexts(session, [{ row, column, text }])
  Object.assign(editing, { before: text, touched: false })
}

/** Closes the cell; a text that had been refused goes with it. */
export function cancelEdit(session: Session): void {
  session.editing = undefined
  letGo(session)
  session.ports.changed({ kind: 'editing' })
}

/** Lets the refused text of the current cell go. */
export function letGo(session: Session): void {
  const { activePlace } = session
  if (session.pending.at(activePlace)?.state !== 'refused') return
  session.ports.changed({ kind: 'pending', places: session.pending.letGo(activePlace!) })
}

/** Takes out what was set in the selected cells, so that they carry again. */
export function clearSelected(session: Session): void {
  const { model } = session
  const spots = spotsOf(model.ground, session.selection)
  const why = spots.map((spot) => whyNotEdited(model, spot))
  const cells = spots.filter((spot, index) => why[index] === undefined && (model.cell(spot)?.state === 'set' || session.pendingAt(spot)))
  if (cells.length > 0) return clearCells(session, cells.map((spot) => model.placeOf(spot)!))
  const refusal = why.find((each) => each !== undefined) ?? (spots.length === 0 ? whyNotEdited(model, session.active) : undefined)
  if (refusal !== undefined) session.ports.announce(refusal, 'shown')
}

/** Lays copied text over the grid, as one gesture. */
export function pasteText(session: Session, text: string): void {
  pasteBlock(session, readTsv(text))
}

/** Lays a block of texts over the grid, as one gesture. */
export function pasteBlock(session: Session, block: readonly (readonly string[])[]): void {
  const { model } = session
  if (!model.writable) return session.ports.announce(whyNotEdited(model, session.active) ?? '', 'shown')
  const { cells, skipped, beyond } = layPaste(model, session.selection, block)
  sendAround(session, cells, skipped, beyond)
}

/** Sends the texts of a block, and says at once which of its cells are worked out, and how many texts had none. */
export function sendAround(session: Session, cells: ({ text: string } & GridPlace)[], computed: readonly GridPlace[], beyond = 0): void {
  const skipped = computed.map((place) => ({ ...place, why: say('refuse.computed') }))
  tellLeft(session, skipped, beyond)
  // What the answer leaves out is told in one with these, which it would else take the place of.
  if (cells.length > 0) sendTexts(session, cells, { left: (left) => tellLeft(session, [...skipped, ...left], beyond) })
}

/** Cells that stayed as they were while others were written: named with the reason, so that none is missed. */
function tellLeft(session: Session, left: readonly LeftOut[], beyond = 0): void {
  const { model } = session
  const lines = left.slice(0, mostNamed).map(({ why, ...place }) => say('left.one', spotName(model, model.spotOf(place) ?? session.active), why))
  if (left.length > mostNamed) lines.push(say('left.more', left.length - mostNamed))
  if (beyond > 0) lines.push(say('left.beyond', beyond))
  if (lines.length > 0) session.note(`${say('left.title')} ${lines.join(' ')}`)
}

/** The selected cells as text for the clipboard. */
export const copiedText = (session: Session): string => printTsv(copiedBlock(session))

/** The texts of the selected cells, row by row; a heading, a header and a label give their own. */
export function copiedBlock(session: Session): string[][] {
  const { model, selection: { active } } = session
  if (active.row === HEADER) return [[model.column(active.column)?.id ?? '']]
  if (active.column === LABELS) return [[model.row(active.row)?.label ?? '']]
  const { top, bottom, left, right } = blockOf(session.selection)
  const lines: string[][] = []
  for (let row = top; row <= bottom; row++) {
    if (model.row(row)?.kind !== 'group') lines.push(Array.from({ length: right + 1 - left }, (_, at) => model.cell({ row, column: left + at })?.text ?? ''))
  }
  return lines
}

/** Opens a form, or says why it cannot be. */
export function openForm(session: Session, form: FormName): void {
  const { model } = session
  if (!model.writable) return session.ports.announce(whyNotEdited(model, session.active) ?? say('refuse.broken'), 'shown')
  if (form === 'remark' && !session.onCell) return session.ports.announce(say('refuse.noRemark'), 'shown')
  if (form === 'header' && !model.column(session.active.column)) return session.ports.announce(say('refuse.noEntry'), 'shown')
  session.ports.changed({ kind: 'form', form })
}

interface Sending {
  /** The gesture, where it is another than the setting of these cells. */
  as?: Gesture
  /** Tells of cells that the answer left out. */
  left?: (left: readonly LeftOut[]) => void
}

/** Sends texts as one gesture and keeps them until they are written; each that cannot be says why. */
export function sendTexts(session: Session, cells: ({ text: string } & GridPlace)[], { as, left = (each) => tellLeft(session, each) }: Sending = {}): void {
  const [first] = cells
  if (!as && cells.length === 1 && first!.text.trim() === '') return clearCells(session, [{ row: first!.row, column: first!.column }])
  const gesture = as ?? (cells.length === 1 ? { kind: 'setCell' as const, ...first! } : { kind: 'setCells' as const, cells, partly: true })
  const id = session.outbox.send(gesture, (answer) => takeAnswer(session, id, answer, left))
  session.pending.add(id, cells)
  session.ports.changed({ kind: 'pending', places: cells })
}

function clearCells(session: Session, cells: GridPlace[]): void {
  session.ports.changed({ kind: 'pending', places: session.pending.drop(cells) })
  session.outbox.send({ kind: 'clearCells', cells, ...(cells.length > 1 && { partly: true }) }, ({ refused, left = [] }) => {
    tellLeft(session, left)
    if (refused !== undefined) session.note(say('refused.title', refused))
  })
}

function refuse(session: Session, place: GridPlace, text: string, why: string): void {
  session.pending.keep([{ ...place, text }], why)
  session.ports.announce(say('refused.title', why), 'urgent')
  session.ports.changed({ kind: 'pending', places: [place] })
}

function takeAnswer(session: Session, gesture: number, { refused, left = [] }: Answer, tell: (left: readonly LeftOut[]) => void): void {
  const places = session.pending.answer(gesture, refused, left)
  if (left.length > 0) tell(left)
  if (refused !== undefined) session.ports.announce(say('refused.title', refused), 'urgent')
  else session.ports.later(settleMs, () => session.ports.changed({ kind: 'pending', places: session.pending.settle() }))
  session.ports.changed({ kind: 'pending', places })
}
