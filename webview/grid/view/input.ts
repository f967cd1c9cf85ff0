import { printHtmlTable, readHtmlTable } from '../model/htmlTable'
import { readMoveKey } from '../model/keys'
import { blockOf, inBlock } from '../model/selection'
import type { Session } from '../model/session'
import { toggleGroup } from '../model/hide'
import { canStand, HEADER, LABELS, nearestSpot, type Spot } from '../model/spot'
import { printTsv } from '../model/tsv'
import { press, selectLine } from '../model/walk'
import { setWidth, usualWidth } from '../model/widths'
import { beginEdit, clearSelected, copiedBlock, pasteBlock, pasteText } from '../model/write'
import type { GridBody } from './gridBody'

/** Keys, pointer and clipboard of the grid. Keys that are not ours reach the editor untouched. */
export function listenToGrid(session: Session, body: GridBody): void {
  listenToKeys(session, body)
  // Before the pointer's, which it keeps from selecting.
  listenToEdges(session, body)
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

/** The right edge of an entry's header is drawn to make it wider or narrower; a double click makes it as usual. */
function listenToEdges(session: Session, body: GridBody): void {
  let drawn: { column: number; from: number; width: number } | undefined
  const { surface } = body
  surface.addEventListener('pointerdown', (event) => {
    const column = event.button === 0 ? body.edgeAt(event.clientX, event.clientY) : undefined
    if (column === undefined) return
    drawn = { column, from: event.clientX, width: body.boxOf({ row: HEADER, column }).width }
    surface.setPointerCapture(event.pointerId)
    event.preventDefault()
    event.stopImmediatePropagation()
  })
  surface.addEventListener('pointermove', (event) => {
    surface.classList.toggle('on-edge', drawn !== undefined || body.edgeAt(event.clientX, event.clientY) !== undefined)
    if (drawn) setWidth(session, drawn.column, drawn.width + event.clientX - drawn.from)
  })
  for (const name of ['pointerup', 'pointercancel'] as const) surface.addEventListener(name, () => { drawn = undefined })
  surface.addEventListener('dblclick', (event) => {
    const column = body.edgeAt(event.clientX, event.clientY)
    if (column === undefined) return
    setWidth(session, column, usualWidth)
    event.stopImmediatePropagation()
  })
}

function listenToPointer(session: Session, body: GridBody): void {
  let dragging: 'cells' | 'columns' | 'rows' | undefined
  body.surface.addEventListener('pointerdown', (event) => {
    const spot = body.spotAt(event.clientX, event.clientY)
    if (event.button === 2) return selectForMenu(session, spot)
    if (event.button !== 0) return
    const near = canStand(session.model.ground, spot) ? spot : undefined
    body.grid.focus({ preventScroll: true })
    if (!near) return
    event.preventDefault()
    const isGroup = session.model.row(near.row)?.kind === 'group'
    const isLine = !isGroup && (near.row === HEADER || near.column === LABELS)
    dragging = isGroup ? undefined : !isLine ? 'cells' : near.row === HEADER ? 'columns' : 'rows'
    if (dragging) body.surface.setPointerCapture(event.pointerId)
    if (isLine && (event.shiftKey || event.ctrlKey || event.metaKey)) return selectLine(session, near, event.shiftKey)
    session.select(near, { extend: event.shiftKey })
    if (isGroup && !event.shiftKey) toggleGroup(session)
  })
  body.surface.addEventListener('pointermove', (event) => {
    if (!dragging) return
    const spot = body.spotAt(event.clientX, event.clientY)
    if (dragging !== 'cells') return drawLines(session, dragging, spot)
    const near = nearestSpot(session.model.ground, { row: Math.max(0, spot.row), column: Math.max(0, spot.column) })
    const { active } = session
    if (near && (near.row !== active.row || near.column !== active.column)) session.select(near, { extend: true })
  })
  const stop = () => { dragging = undefined }
  body.surface.addEventListener('pointerup', stop)
  body.surface.addEventListener('pointercancel', stop)
  body.surface.addEventListener('dblclick', (event) => {
    const spot = body.spotAt(event.clientX, event.clientY)
    if (canStand(session.model.ground, spot) && session.model.row(spot.row)?.kind !== 'group') beginEdit(session, 'edit', 'end')
  })
}

/** From a header or a label that the pointer went down on, whole columns or rows up to where it is now. */
function drawLines(session: Session, lines: 'columns' | 'rows', spot: Spot): void {
  const { model: { ground }, active } = session
  const to = lines === 'columns' ? { row: HEADER, column: Math.max(0, spot.column) } : { row: Math.max(0, spot.row), column: LABELS }
  const stays = lines === 'columns' ? to.column === active.column : to.row === active.row
  if (!stays && canStand(ground, to) && ground.rows[to.row]?.kind !== 'group') selectLine(session, to, true)
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
    const block = copiedBlock(session)
    event.clipboardData.setData('text/plain', printTsv(block))
    event.clipboardData.setData('text/html', printHtmlTable(block))
    event.preventDefault()
    return true
  }
  document.addEventListener('copy', copy)
  document.addEventListener('cut', (event) => copy(event) && clearSelected(session))
  document.addEventListener('paste', (event) => {
    if (!ours() || !event.clipboardData) return
    const text = event.clipboardData.getData('text/plain')
    const html = event.clipboardData.getData('text/html')
    // A parsed document runs and loads nothing.
    const block = html === '' ? undefined : readHtmlTable(new DOMParser().parseFromString(html, 'text/html'))
    if (!block && text === '') return
    event.preventDefault()
    if (block) pasteBlock(session, block)
    else pasteText(session, text)
  })
}
