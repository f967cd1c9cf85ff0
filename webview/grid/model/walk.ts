import { findingName } from './describe'
import { nextFinding } from './findingsOrder'
import type { MoveKey } from './keys'
import * as moves from './moves'
import { say } from '../strings'
import { blockOf, isRange, spotsOf } from './selection'
import type { Session } from './session'
import { LABELS, type Spot } from './spot'
import { beginEdit, clearSelected, letGo, openForm } from './write'

/** What a page of rows is: the row a screenful further on. The drawing knows how high the screen is. */
export type PageFrom = (row: number, down: boolean) => number

/** Does what a key means. False when the key is not used here after all and goes its usual way. */
export function press(session: Session, key: MoveKey, pageFrom: PageFrom): boolean {
  const from = session.active
  const { ground } = session.model
  switch (key.kind) {
    case 'step': return go(session, moves.step(ground, from, key.rows, key.columns), key.extend)
    case 'edge': return go(session, moves.toEdge(ground, from, key.rows, key.columns), key.extend)
    case 'page': return go(session, moves.towardsRow(ground, from, pageFrom(from.row, key.down)), key.extend)
    case 'rowStart': return go(session, moves.toRowStart(ground, from), key.extend)
    case 'rowEnd': return go(session, moves.toRowEnd(ground, from), key.extend)
    case 'first': return go(session, moves.toFirst(ground, from), key.extend)
    case 'last': return go(session, moves.toLast(ground, from), key.extend)
    case 'tab': return goTab(session, key.back)
    case 'edit': return did(beginEdit(session, 'edit', key.caret))
    case 'type': return did(beginEdit(session, 'replace', 'end'))
    case 'clear': return did(clearSelected(session))
    case 'remark': return did(openForm(session, 'remark'))
    case 'finding': return did(goToFinding(session, key.back))
    case 'leave': return did(leave(session))
  }
}

/** Moves on after a cell was committed. */
export function goOn(session: Session, where: 'down' | 'up' | 'right' | 'left'): void {
  const { ground } = session.model
  const { active } = session
  if (where === 'right') return void goTab(session, false)
  if (where === 'left') return void goTab(session, true)
  if (where === 'up') return session.select(moves.step(ground, active, -1, 0))
  session.select(moves.step(ground, { row: active.row, column: session.runColumn ?? active.column }, 1, 0))
}

export function goToFinding(session: Session, back: boolean): void {
  const spot = nextFinding(session.model, session.active, back)
  if (!spot) return
  session.select(spot)
  session.ports.changed({ kind: 'focus' })
  session.ports.announce(session.model.findingsAt(spot).map(findingName).join('. '), 'polite')
}

/** Selects all cells of the selection's rows, or of its entries, or of the grid. */
export function selectWhole(session: Session, what: 'selectRow' | 'selectColumn' | 'selectAll'): void {
  const { model: { ground }, selection } = session
  const [first, last] = [moves.toFirst(ground, session.active), moves.toLast(ground, session.active)]
  if (first.row < 0 || ground.columns === 0) return
  const { top, bottom, left, right } = blockOf(selection)
  const rows = what === 'selectRow' && top >= 0 ? [top, bottom] as const : [first.row, last.row] as const
  const columns = what === 'selectColumn' && right >= 0 ? [Math.max(left, 0), right] as const : [0, ground.columns - 1] as const
  session.selectRange({ active: { row: rows[0], column: columns[0] }, anchor: { row: rows[1], column: columns[1] } })
  session.ports.announce(say('selected', spotsOf(ground, session.selection).length), 'polite')
}

/** Selects whole columns up to a header, or whole rows up to a label: from the one stood on where it is drawn on, else that alone. */
export function selectLine(session: Session, to: Spot, extend: boolean): void {
  const { model: { ground }, selection: { active, anchor } } = session
  const [first, last] = [moves.toFirst(ground, active), moves.toLast(ground, active)]
  if (first.row < 0 || ground.columns === 0) return
  if (to.column === LABELS) {
    const from = extend && anchor.row >= 0 ? anchor.row : to.row
    session.selectRange({ active: { row: to.row, column: 0 }, anchor: { row: from, column: last.column } })
  } else {
    const from = extend && anchor.column >= 0 ? anchor.column : to.column
    session.selectRange({ active: { row: first.row, column: to.column }, anchor: { row: last.row, column: from } })
  }
  session.ports.announce(say('selected', spotsOf(ground, session.selection).length), 'polite')
}

function go(session: Session, to: Spot, extend: boolean): true {
  session.select(to, { extend })
  return true
}

function goTab(session: Session, back: boolean): boolean {
  const { ground } = session.model
  const run = session.runColumn ?? session.active.column
  const to = back ? moves.tabBack(ground, session.active) : moves.tab(ground, session.active, run)
  if (!to) return false
  session.runColumn = run
  session.select(to, { keepRun: true })
  return true
}

function leave(session: Session): void {
  if (session.pendingAt(session.active)?.state === 'refused') return letGo(session)
  if (isRange(session.selection)) return session.select(session.active)
  session.ports.changed({ kind: 'leave' })
}

const did = (_: void) => true
