import { readMoveKey } from '../model/keys'
import { blockOf, inBlock } from '../model/selection'
import type { Session } from '../model/session'
import { toggleGroup } from '../model/hide'
import { canStand, nearestSpot, type Spot } from '../model/spot'
import { press } from '../model/walk'
import { beginEdit, clearSelected, copiedText, pasteText } from '../model/write'
import type { GridBody } from './gridBody'

/** Keys, pointer and clipboard of the grid. Keys that are not ours reach the editor untouched. */
export function listenToGrid(session: Session, body: GridBody): void {
  listenToKeys(session, body)
  listenToPointer(session, body)
  listenToClipboard(session, body)
}

function listenToKeys(session: Session, body: GridBody): void {
  body.grid.addEventListener('keydown', (event) => {
    if (event.isComposing || event.target !== body.grid) return
    const key = readMoveKey({ ...pick(event), altGraph: event.getModifierState('AltGraph') })
    if (!key || !press(session, key, body.pageFrom)) return
    event.stopPropagation()
    // The character that begins an edit is left to land in the input, which has the focus by now.
    if (key.kind !== 'type' || !session.editing) event.preventDefault()
  })
}

const pick = ({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyboardEvent) => ({ key, ctrlKey, metaKey, shiftKey, altKey })

function listenToPointer(session: Session, body: GridBody): void {
  let dragging = false
  body.surface.addEventListener('pointerdown', (event) => {
    const spot = body.spotAt(event.clientX, event.clientY)
    if (event.button === 2) return selectForMenu(session, spot)
    if (event.button !== 0) return
    const near = canStand(session.model.ground, spot) ? spot : undefined
    body.grid.focus({ preventScroll: true })
    if (!near) return
    dragging = near.row >= 0 && near.column >= 0
    if (dragging) body.surface.setPointerCapture(event.pointerId)
    session.select(near, { extend: event.shiftKey })
    if (session.model.row(near.row)?.kind === 'group' && !event.shiftKey) toggleGroup(session)
    event.preventDefault()
  })
  body.surface.addEventListener('pointermove', (event) => {
    if (!dragging) return
    const spot = body.spotAt(event.clientX, event.clientY)
    const near = nearestSpot(session.model.ground, { row: Math.max(0, spot.row), column: Math.max(0, spot.column) })
    const { active } = session
    if (near && (near.row !== active.row || near.column !== active.column)) session.select(near, { extend: true })
  })
  const stop = () => { dragging = false }
  body.surface.addEventListener('pointerup', stop)
  body.surface.addEventListener('pointercancel', stop)
  body.surface.addEventListener('dblclick', (event) => {
    const spot = body.spotAt(event.clientX, event.clientY)
    if (canStand(session.model.ground, spot) && session.model.row(spot.row)?.kind !== 'group') beginEdit(session, 'edit', 'end')
  })
}

/** A menu is about what it was opened on: a cell outside of the selection becomes the current one. */
function selectForMenu(session: Session, spot: Spot): void {
  if (canStand(session.model.ground, spot) && !inBlock(blockOf(session.selection), spot.row, spot.column)) session.select(spot)
}

/**
 * Copying out of something that is not text is only dispatched when `beforecopy` claims it, which the editor's
 * own copy and paste commands rely on.
 */
function listenToClipboard(session: Session, body: GridBody): void {
  const ours = () => document.activeElement === body.grid
  for (const name of ['beforecopy', 'beforecut', 'beforepaste']) {
    document.addEventListener(name, (event) => ours() && event.preventDefault())
  }
  const copy = (event: ClipboardEvent) => {
    if (!ours() || !event.clipboardData) return false
    event.clipboardData.setData('text/plain', copiedText(session))
    event.preventDefault()
    return true
  }
  document.addEventListener('copy', copy)
  document.addEventListener('cut', (event) => copy(event) && clearSelected(session))
  document.addEventListener('paste', (event) => {
    const text = event.clipboardData?.getData('text/plain')
    if (!ours() || !text) return
    event.preventDefault()
    pasteText(session, text)
  })
}
