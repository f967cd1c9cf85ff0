import { moveEntryTo } from '../model/reshape'
import { blockOf } from '../model/selection'
import type { Session } from '../model/session'
import { HEADER } from '../model/spot'
import { setUsualWidth, setWidth } from '../model/widths'
import { make } from './dom'
import type { GridBody } from './gridBody'

/** How far, in px, the pointer goes before a press becomes a drag. */
const slack = 4
/** How near to the edge of what scrolls, in px, a carried entry scrolls it on, and by how much a frame. */
const scrollZone = 28
const scrollStep = 24

/** The right edge of an entry's header, or of the corner, is drawn to make the column wider or narrower; a double click makes it as usual. */
export function listenToEdges(session: Session, body: GridBody): void {
  let drawn: { column: number; from: number; width: number } | undefined
  const { surface, places } = body
  surface.addEventListener('pointerdown', (event) => {
    const column = event.button === 0 ? places.edgeAt(event.clientX, event.clientY) : undefined
    if (column === undefined) return
    drawn = { column, from: event.clientX, width: body.boxOf({ row: HEADER, column }).width }
    surface.setPointerCapture(event.pointerId)
    event.preventDefault()
    event.stopImmediatePropagation()
  })
  surface.addEventListener('pointermove', (event) => {
    surface.classList.toggle('on-edge', drawn !== undefined || places.edgeAt(event.clientX, event.clientY) !== undefined)
    if (drawn) setWidth(session, drawn.column, drawn.width + event.clientX - drawn.from)
  })
  for (const name of ['pointerup', 'pointercancel'] as const) surface.addEventListener(name, () => { drawn = undefined })
  surface.addEventListener('dblclick', (event) => {
    const column = places.edgeAt(event.clientX, event.clientY)
    if (column === undefined) return
    setUsualWidth(session, column)
    event.stopImmediatePropagation()
  })
}

/** An entry on its way to another place: where it was taken up, and where it would come now. */
interface Carried {
  column: number
  from: number
  x: number
  y: number
  isMoving: boolean
}

/**
 * An entry is taken by its grip, or by its header where that or all of its column is selected already: drawn on, any other header
 * selects columns, as in a spreadsheet. A line shows where it would come; Escape leaves it where it is.
 */
export class EntryDrag {
  readonly #line = make('div', 'landing', { 'aria-hidden': 'true' })
  readonly #name = make('div', 'carried', { 'aria-hidden': 'true' })
  #carried: Carried | undefined

  constructor(readonly session: Session, readonly body: GridBody) {
    const { surface } = body
    surface.addEventListener('pointerdown', (event) => this.#take(event))
    surface.addEventListener('pointermove', (event) => this.#carry(event))
    surface.addEventListener('pointerup', () => this.#letGo(true))
    surface.addEventListener('pointercancel', () => this.#letGo(false))
    window.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape' || !this.#carried) return
      event.preventDefault()
      event.stopImmediatePropagation()
      this.#letGo(false)
    }, { capture: true })
  }

  #take(event: PointerEvent): void {
    const { session, body } = this
    const { clientX, clientY } = event
    if (event.button !== 0 || event.shiftKey || event.ctrlKey || event.metaKey || !session.model.writable || !body.places.isInHeader(clientX, clientY)) return
    const { column } = body.spotAt(clientX, clientY)
    if (column < 0 || !(this.#isSelected(column) || isGrip(event))) return
    this.#carried = { column, from: clientX, x: clientX, y: clientY, isMoving: false }
    body.surface.setPointerCapture(event.pointerId)
    body.grid.focus({ preventScroll: true })
    event.preventDefault()
    event.stopImmediatePropagation()
  }

  /** Whether the entry's header is the current cell, or its cells alone are selected from the first to the last. */
  #isSelected(column: number): boolean {
    const { selection, model } = this.session
    const { top, left, bottom, right } = blockOf(selection)
    const isHeader = selection.active.row === HEADER && selection.active.column === column
    return isHeader || (left === column && right === column && top <= firstRow(model.ground.rows) && bottom === model.ground.rows.length - 1)
  }

  #carry({ clientX, clientY }: PointerEvent): void {
    const carried = this.#carried
    if (!carried) return
    Object.assign(carried, { x: clientX, y: clientY })
    if (!carried.isMoving && Math.abs(clientX - carried.from) >= slack) this.#begin(carried)
    if (carried.isMoving) this.#draw(carried)
  }

  #begin(carried: Carried): void {
    carried.isMoving = true
    const facts = this.session.model.column(carried.column)!
    this.#name.textContent = facts.id || facts.key
    this.body.surface.classList.add('is-carrying')
    this.body.surface.append(this.#line, this.#name)
    const scrollOn = () => {
      if (this.#carried !== carried) return
      this.#scroll(carried)
      requestAnimationFrame(scrollOn)
    }
    requestAnimationFrame(scrollOn)
  }

  #scroll(carried: Carried): void {
    const { scroller, places } = this.body
    const { left, right } = scroller.getBoundingClientRect()
    const start = left + places.layout.labels + places.layout.pinnedWidth
    const by = carried.x > right - scrollZone ? scrollStep : carried.x < start + scrollZone ? -scrollStep : 0
    const before = scroller.scrollLeft
    if (by !== 0) scroller.scrollBy(by, 0)
    if (scroller.scrollLeft !== before) this.#draw(carried)
  }

  #draw({ column, x, y }: Carried): void {
    const { body } = this
    const gap = body.places.gapAt(x)
    const stays = gap === column || gap === column + 1
    const { columns, labels } = body.places.layout
    const { scrollTop, clientHeight } = body.scroller
    Object.assign(this.#line.style, { left: `${labels + columns.offset(gap)}px`, top: `${scrollTop}px`, height: `${clientHeight}px` })
    this.#line.hidden = stays
    Object.assign(this.#name.style, { left: `${x + 12}px`, top: `${y + 14}px` })
  }

  #letGo(lands: boolean): void {
    const carried = this.#carried
    if (!carried) return
    this.#carried = undefined
    this.body.surface.classList.remove('is-carrying')
    this.#line.remove()
    this.#name.remove()
    if (!carried.isMoving) this.session.select({ row: HEADER, column: carried.column })
    else if (lands) moveEntryTo(this.session, carried.column, this.body.places.gapAt(carried.x))
  }
}

const firstRow = (rows: readonly { kind: string }[]) => rows.findIndex(({ kind }) => kind !== 'group')

/** The dots over an entry's name, which are drawn while the pointer is on its header (grid.css). */
function isGrip({ target, clientX, clientY }: PointerEvent): boolean {
  const header = target instanceof Element && target.closest('.header-cell')
  if (!header) return false
  const { left, width, top } = header.getBoundingClientRect()
  return clientY - top <= 11 && Math.abs(clientX - left - width / 2) <= 20
}
