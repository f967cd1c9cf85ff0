import type { GridView } from '../../../src/core/grid/view'
import { say } from '../strings'
import { Axis, scrollToShow } from '../model/axis'
import type { KeyedScroll } from '../model/savedState'
import type { Session } from '../model/session'
import { HEADER, LABELS, type Spot } from '../model/spot'
import { make, setAttribute } from './dom'
import { activeId, lookOf, paintCell, paintHeader, paintLabel, type Look } from './paint'
import { headerHeight, labelWidth, rowHeight, widthOf } from './sizes'
import { RowSlot, Slot, WordsSlot } from './slots'

/** Rows and columns kept ready beyond each edge of what is in sight, so that scrolling never shows a gap. */
const spareRows = 4
const spareColumns = 3

/** How long, in ms, scrolling has to rest before the elements are put in reading order. */
const tidyMs = 200

/** The index of a row slot whose place on the page is yet to be set. */
const unplaced = -2

/** Where something lies within the scrolled content, in px. */
export interface Box {
  left: number
  top: number
  width: number
  height: number
}

/**
 * The grid itself: a pool of cells that are moved and rewritten as one scrolls, in both directions, so that the
 * number of elements does not depend on the size of the notebook. Item i sits in slot i modulo the pool's length:
 * one step of scrolling rewrites one row or one column of slots.
 *
 * The focus stays on the grid element, which points at its current cell (aria-activedescendant): a cell that is
 * recycled under a roving focus would drop it.
 */
export class GridBody {
  readonly scroller = make('div', 'scroller')
  readonly grid = make('div', 'grid', { role: 'grid', tabindex: '0', 'aria-multiselectable': 'true', 'aria-describedby': 'grid-hint' })
  /** For what floats over cells and scrolls with them. */
  readonly overlay = make('div', 'overlay')
  readonly #content = make('div', 'content', {}, this.grid, this.overlay)
  readonly #header = new RowSlot<WordsSlot>('columnheader', () => new WordsSlot('columnheader', ['header-id', 'header-more']))
  readonly #rows: RowSlot[] = []
  #view: GridView | undefined
  #rowAxis = new Axis([])
  #columnAxis = new Axis([])
  #labels = 0
  /** What the rows had for room when they were last laid out. */
  #height = 0
  #width = 0
  #columnSlots = 0
  #tidying: ReturnType<typeof setTimeout> | undefined

  constructor(readonly session: Session, readonly scrolled: () => void) {
    this.#header.className = 'row header-row'
    this.grid.append(this.#header.element)
    this.scroller.append(this.#content)
    this.scroller.addEventListener('scroll', () => {
      this.#draw(false)
      this.#tidySoon()
      this.scrolled()
    })
    new ResizeObserver(() => this.#resize()).observe(this.scroller)
  }

  /** Draws another view, at the place where the last one was scrolled to, or at `scroll`. */
  show(scroll: KeyedScroll | undefined): void {
    const { view } = this.session.model
    const keep = this.#view ? this.keyedScroll() : scroll
    this.#view = view
    for (const row of [this.#header, ...this.#rows]) row.index = unplaced
    this.#rowAxis = new Axis(view.rows.map(rowHeight))
    this.#columnAxis = new Axis(view.columns.map(widthOf))
    setAttribute(this.grid, 'aria-rowcount', String(view.rows.length + 1))
    setAttribute(this.grid, 'aria-colcount', String(view.columns.length + 1))
    this.#frame()
    this.#layOut()
    this.#scrollTo(keep)
    this.#draw(true)
    this.#tidySoon()
  }

  /** Draws again what does not belong to a cell, and all cells in sight. */
  repaint(): void {
    this.#frame()
    this.#draw(true)
  }

  /** Draws single cells and headers again. */
  repaintSome(spots: readonly Spot[], columns: readonly number[]): void {
    const look = lookOf(this.session)
    for (const { row, column } of spots) {
      const slot = this.#rowSlot(row)?.cells[column % this.#columnSlots]
      if (slot?.index === column) paintCell(slot, row, column, look)
    }
    for (const column of columns) {
      const slot = this.#header.cells[column % this.#columnSlots]
      if (slot?.index === column) paintHeader(slot, column, look)
    }
    this.#pointAtActive()
  }

  /** Scrolls as little as shows the spot whole. */
  reveal({ row, column }: Spot): void {
    const { scroller } = this
    const { width, height } = this.#room()
    if (row !== HEADER) scroller.scrollTop = scrollToShow(this.#rowAxis, row, scroller.scrollTop, height)
    if (column !== LABELS) scroller.scrollLeft = scrollToShow(this.#columnAxis, column, scroller.scrollLeft, width)
    this.#draw(false)
    this.#pointAtActive()
  }

  /** The row a screenful away. */
  pageFrom = (row: number, down: boolean): number => {
    const { height } = this.#room()
    return this.#rowAxis.at(this.#rowAxis.offset(Math.max(row, 0)) + (down ? height : -height))
  }

  /** Where a spot lies in the content; headers and labels where they are pinned just now. */
  boxOf({ row, column }: Spot): Box {
    return {
      left: column === LABELS ? this.scroller.scrollLeft : this.#labels + this.#columnAxis.offset(column),
      width: column === LABELS ? this.#labels : this.#columnAxis.size(column),
      top: row === HEADER ? this.scroller.scrollTop : headerHeight + this.#rowAxis.offset(row),
      height: row === HEADER ? headerHeight : this.#rowAxis.size(row),
    }
  }

  /** What of the content is in sight, without the pinned header and labels. */
  sight(): Box {
    const { scrollLeft, scrollTop } = this.scroller
    return { left: scrollLeft + this.#labels, top: scrollTop + headerHeight, ...this.#room() }
  }

  /** The same as a rectangle on the page. */
  rectOf(spot: Spot): DOMRect {
    const box = this.boxOf(spot)
    const { left, top } = this.#content.getBoundingClientRect()
    return new DOMRect(left + box.left, top + box.top, box.width, box.height)
  }

  /** The spot under a point of the page; points outside give the nearest one. */
  spotAt(clientX: number, clientY: number): Spot {
    const { left, top } = this.scroller.getBoundingClientRect()
    const x = clientX - left
    const y = clientY - top
    return {
      column: x < this.#labels ? LABELS : this.#columnAxis.at(x - this.#labels + this.scroller.scrollLeft),
      row: y < headerHeight ? HEADER : this.#rowAxis.at(y - headerHeight + this.scroller.scrollTop),
    }
  }

  keyedScroll(): KeyedScroll {
    const { scrollTop, scrollLeft } = this.scroller
    const row = this.#rowAxis.at(scrollTop)
    const column = this.#columnAxis.at(scrollLeft)
    const rowKey = this.#view?.rows[row]?.key
    const columnKey = this.#view?.columns[column]?.key
    return {
      ...(rowKey !== undefined && { row: rowKey }),
      ...(columnKey !== undefined && { column: columnKey }),
      rowPx: scrollTop - this.#rowAxis.offset(row),
      columnPx: scrollLeft - this.#columnAxis.offset(column),
    }
  }

  #frame(): void {
    const { model } = this.session
    setAttribute(this.grid, 'aria-label', say('grid.name', model.view.title || say('bar.untitled')))
    setAttribute(this.grid, 'aria-readonly', model.writable ? undefined : 'true')
    setAttribute(this.grid, 'aria-disabled', model.view.state === 'broken' ? 'true' : undefined)
  }

  /** A current cell that was in sight stays so, also when a panel opens over it. */
  #resize(): void {
    if (!this.#view) return
    const keep = this.keyedScroll()
    const { active } = this.session
    const left = active.column === LABELS ? 0 : this.#columnAxis.offset(active.column) - this.scroller.scrollLeft
    const sawColumn = active.column !== LABELS && left >= 0 && left < this.#width
    const sawActive = active.row === HEADER || this.#rowAxis.offset(active.row) < this.scroller.scrollTop + this.#height
    this.#layOut()
    this.#scrollTo(keep)
    this.#draw(true)
    if (sawActive && active.row !== HEADER) this.reveal({ row: active.row, column: sawColumn ? active.column : LABELS })
  }

  /** Sizes the content and the pool to the page. */
  #layOut(): void {
    this.#labels = labelWidth(this.scroller.clientWidth)
    this.scroller.classList.toggle('has-narrow-labels', this.#labels < 240)
    this.#content.style.width = `${this.#labels + this.#columnAxis.total}px`
    this.#content.style.height = `${headerHeight + this.#rowAxis.total}px`
    this.scroller.style.setProperty('--labels', `${this.#labels}px`)
    const { width, height } = this.#room()
    this.#height = height
    this.#width = width
    this.#columnSlots = this.#columnAxis.reach(width, spareColumns)
    const rowSlots = this.#rowAxis.reach(height, spareRows)
    while (this.#rows.length < rowSlots) {
      const row = new RowSlot('rowheader', () => new Slot('gridcell'))
      this.#rows.push(row)
      this.grid.append(row.element)
    }
    for (const spare of this.#rows.splice(rowSlots)) spare.element.remove()
    for (const row of [this.#header, ...this.#rows]) row.stretch(this.#columnSlots)
  }

  /** What is left for cells beside the pinned header and labels. */
  #room(): { width: number; height: number } {
    return {
      width: Math.max(0, this.scroller.clientWidth - this.#labels),
      height: Math.max(0, this.scroller.clientHeight - headerHeight),
    }
  }

  #scrollTo(keep: KeyedScroll | undefined): void {
    if (!keep) {
      this.scroller.scrollLeft = this.#columnAxis.total
      return
    }
    const rows = this.#view!.rows.findIndex(({ key }) => key === keep.row)
    const columns = this.#view!.columns.findIndex(({ key }) => key === keep.column)
    if (rows >= 0) this.scroller.scrollTop = this.#rowAxis.offset(rows) + keep.rowPx
    if (columns >= 0) this.scroller.scrollLeft = this.#columnAxis.offset(columns) + keep.columnPx
  }

  /** Brings the slots to what is in sight; with `all` writes every one of them again. */
  #draw(all: boolean): void {
    const { scrollTop, scrollLeft } = this.scroller
    this.scroller.classList.toggle('is-scrolled-across', scrollLeft > 0)
    this.scroller.classList.toggle('is-scrolled-down', scrollTop > 0)
    const firstRow = this.#rowAxis.firstOf(scrollTop, this.#rows.length, spareRows)
    const firstColumn = this.#columnAxis.firstOf(scrollLeft, this.#columnSlots, spareColumns)
    const look = lookOf(this.session)
    this.#drawRow(this.#header, HEADER, firstColumn, all, look)
    for (let row = firstRow; row < firstRow + this.#rows.length; row++) {
      this.#drawRow(this.#rows[row % this.#rows.length]!, row, firstColumn, all, look)
    }
    if (all) this.#pointAtActive()
  }

  #drawRow(slot: RowSlot, row: number, firstColumn: number, all: boolean, look: Look): void {
    const moved = slot.index !== row
    if (moved) this.#placeRow(slot, row)
    if (moved || all) paintLabel(slot.label, row, look)
    if (row !== HEADER && this.#view!.rows[row]!.kind === 'group') return
    for (let column = firstColumn; column < firstColumn + this.#columnSlots; column++) {
      const cell = slot.cells[column % this.#columnSlots]!
      const shifted = cell.index !== column
      if (shifted || all) {
        cell.index = column
        cell.place(this.#labels + this.#columnAxis.offset(column), this.#columnAxis.size(column))
      }
      if (!shifted && !moved && !all) continue
      if (row === HEADER) paintHeader(cell as WordsSlot, column, look)
      else paintCell(cell, row, column, look)
    }
  }

  #placeRow(slot: RowSlot, row: number): void {
    slot.index = row
    slot.element.setAttribute('aria-rowindex', String(row + 2))
    if (row === HEADER) return
    slot.className = `row row-${this.#view!.rows[row]!.kind}`
    slot.element.style.top = `${headerHeight + this.#rowAxis.offset(row)}px`
    slot.element.style.height = `${this.#rowAxis.size(row)}px`
  }

  #rowSlot(row: number): RowSlot | undefined {
    const slot = this.#rows[row % this.#rows.length]
    return slot?.index === row ? slot : undefined
  }

  /** Says which element is the current cell, when it is among the drawn ones. */
  #pointAtActive(): void {
    setAttribute(this.grid, 'aria-activedescendant', document.getElementById(activeId) ? activeId : undefined)
  }

  #tidySoon(): void {
    clearTimeout(this.#tidying)
    this.#tidying = setTimeout(() => this.#tidy(), tidyMs)
  }

  #tidy(): void {
    for (const row of [this.#header, ...this.#rows]) row.tidy()
    const ordered = [...this.#rows].sort((a, b) => a.index - b.index)
    const isTidy = ordered.every((row, at) => at === 0 || ordered[at - 1]!.element.nextSibling === row.element)
    if (!isTidy) this.grid.append(...ordered.map(({ element }) => element))
  }
}
