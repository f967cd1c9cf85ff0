import { printHtmlTable, readHtmlTable } from '../model/htmlTable'
import { readMoveKey } from '../model/keys'
import { blockOf, inBlock } from '../model/selection'
import type { Session } from '../model/session'
import { toggleGroup } from '../model/hide'
import { canStand, HEADER, LABELS, nearestSpot, type Spot } from '../model/spot'
import { printTsv } from '../model/tsv'
import { press, selectLine } from '../model/walk'
import { beginEdit, clearSelected, copiedBlock, pasteBlock, pasteText } from '../model/write'
import type { GridBody } from './gridBody'
import { EntryDrag, listenToEdges } from './headerDrag'

/** Keys, pointer and clipboard of the grid. Keys that are not ours reach the editor untouched. */
export function listenToGrid(session: Session, body: GridBody): void {
  listenToKeys(session, body)
  // Before the pointer's, which they keep from selecting.
  listenToEdges(session, body)
  new EntryDrag(session, body)
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
    session.select(near, { extend: event.shiftKey, reveal: 'alone' })
    if (isGroup && !event.shiftKey) toggleGroup(session)
  })
  body.surface.addEventListener('pointermove', (event) => {
    if (!dragging) return
    const spot = body.spotAt(event.clientX, event.clientY)
    if (dragging !== 'cells') return drawLines(session, dragging, spot)
    const near = nearestSpot(session.model.ground, { row: Math.max(0, spot.row), column: Math.max(0, spot.column) })
    const { active } = session
    if (near && (near.row !== active.row || near.column !== active.column)) session.select(near, { extend: true, reveal: 'alone' })
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
