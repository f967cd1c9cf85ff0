import type { GridView } from '../../../src/core/grid/view'
import { say } from '../strings'
import { Axis, scrollToShow } from '../model/axis'
import type { KeyedScroll } from '../model/savedState'
import { only } from '../model/selection'
import type { Session } from '../model/session'
import { HEADER, LABELS, type Spot } from '../model/spot'
import { menuOf } from '../model/menuOf'
import { make, setAttribute } from './dom'
import { Pool, type Layout } from './pool'
import { headerHeight, labelWidth, rowHeight, widthOf } from './sizes'

/** Rows and columns kept ready beyond each edge of what is in sight, so that scrolling never shows a gap. */
const spareRows = 4
const spareColumns = 3

/** How near, in px, to a column's edge the pointer takes hold of it. */
const edgePx = 4

/** How long, in ms, scrolling has to rest before the elements are put in reading order. */
const tidyMs = 200

/** Where something lies within the scrolled content, in px. */
export interface Box {
  left: number
  top: number
  width: number
  height: number
}

/**
 * The grid itself: what is in sight of it, drawn in a pool of cells.
 *
 * The focus stays on the grid element, which points at its current cell (aria-activedescendant): a cell that is
 * recycled under a roving focus would drop it.
 */
export class GridBody {
  readonly scroller = make('div', 'scroller')
  readonly grid = make('div', 'grid', { role: 'grid', tabindex: '0', 'aria-multiselectable': 'true', 'aria-describedby': 'grid-hint' })
  /** For what floats over cells and scrolls with them. */
  readonly overlay = make('div', 'overlay')
  readonly #pool: Pool
  /** What the pointer acts on: the grid, and the labels, which belong to its rows but stand beside it. */
  readonly surface = make('div', 'surface', {}, this.grid)
  readonly #content = make('div', 'content', {}, this.surface, this.overlay)
  #view: GridView | undefined
  /** The selection as it is drawn. */
  #selection = only({ row: HEADER, column: LABELS })
  #layout: Layout = { rows: new Axis([]), columns: new Axis([]), labels: 0, header: headerHeight(0), pinned: 0, pinnedWidth: 0 }
  /** What the rows had for room when they were last laid out. */
  #height = 0
  #width = 0
  #tidying: ReturnType<typeof setTimeout> | undefined

  constructor(readonly session: Session, readonly scrolled: () => void) {
    this.#pool = new Pool(session, this.grid)
    this.surface.append(this.#pool.labels)
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
    Object.assign(this.#layout, { rows: new Axis(view.rows.map(rowHeight)), columns: new Axis(view.columns.map((column) => widthOf(column, this.session.widths))) })
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
    this.#pool.drawSome(spots, columns)
    this.#pointAtActive()
  }

  /** Draws again what the selection's move changes. */
  repaintSelection(): void {
    const { selection } = this.session
    this.#pool.drawSelection(this.#selection, selection)
    this.#selection = selection
    this.#pointAtActive()
  }

  /** Scrolls as little as shows the spot whole. */
  reveal({ row, column }: Spot): void {
    const { scroller } = this
    const { width, height } = this.#room()
    if (row !== HEADER) scroller.scrollTop = scrollToShow(this.#layout.rows, row, scroller.scrollTop, height)
    const { columns, pinned, pinnedWidth } = this.#layout
    if (column !== LABELS && column >= pinned) scroller.scrollLeft = scrollToShow(columns, column, scroller.scrollLeft + pinnedWidth, width - pinnedWidth) - pinnedWidth
    this.#draw(false)
    this.#pointAtActive()
  }

  /** The row a screenful away. */
  pageFrom = (row: number, down: boolean): number => {
    const { height } = this.#room()
    return this.#layout.rows.at(this.#layout.rows.offset(Math.max(row, 0)) + (down ? height : -height))
  }

  /** Where a spot lies in the content; headers and labels where they are pinned just now. */
  boxOf({ row, column }: Spot): Box {
    return {
      left: column === LABELS ? this.scroller.scrollLeft : this.#layout.labels + this.#layout.columns.offset(column) + (column < this.#layout.pinned ? this.scroller.scrollLeft : 0),
      width: column === LABELS ? this.#layout.labels : this.#layout.columns.size(column),
      top: row === HEADER ? this.scroller.scrollTop : this.#layout.header + this.#layout.rows.offset(row),
      height: row === HEADER ? this.#layout.header : this.#layout.rows.size(row),
    }
  }

  /** What of the content is in sight around a spot, without the header, the labels and, but for its own cells, a pinned entry. */
  sight({ column }: Spot): Box {
    const { scrollLeft, scrollTop } = this.scroller
    const { labels, pinned, header } = this.#layout
    const pinnedWidth = column < pinned ? 0 : this.#layout.pinnedWidth
    const { width, height } = this.#room()
    return { left: scrollLeft + labels + pinnedWidth, top: scrollTop + header, width: Math.max(0, width - pinnedWidth), height }
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
      column: x < this.#layout.labels ? LABELS : this.#layout.columns.at(this.#along(x - this.#layout.labels)),
      row: y < this.#layout.header ? HEADER : this.#layout.rows.at(y - this.#layout.header + this.scroller.scrollTop),
    }
  }

  /** The px along all columns that shows `x` px right of the labels: what is pinned does not scroll. */
  #along(x: number): number {
    return x < this.#layout.pinnedWidth ? x : x + this.scroller.scrollLeft
  }

  /** The entry whose right edge is under a point of the header, to be drawn wider; undefined where none is. */
  edgeAt(clientX: number, clientY: number): number | undefined {
    const { left, top } = this.scroller.getBoundingClientRect()
    if (clientY - top > this.#layout.header || clientX - left <= this.#layout.labels) return undefined
    const x = this.#along(clientX - left - this.#layout.labels)
    const { columns } = this.#layout
    return [columns.at(x), columns.at(x) - 1].find((column) => column >= 0 && Math.abs(columns.offset(column + 1) - x) <= edgePx)
  }

  keyedScroll(): KeyedScroll {
    const { scrollTop, scrollLeft } = this.scroller
    const row = this.#layout.rows.at(scrollTop)
    const column = this.#layout.columns.at(scrollLeft)
    const rowKey = this.#view?.rows[row]?.key
    const columnKey = this.#view?.columns[column]?.key
    return {
      ...(rowKey !== undefined && { row: rowKey }),
      ...(columnKey !== undefined && { column: columnKey }),
      rowPx: scrollTop - this.#layout.rows.offset(row),
      columnPx: scrollLeft - this.#layout.columns.offset(column),
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
    const left = active.column === LABELS ? 0 : this.#layout.columns.offset(active.column) - this.scroller.scrollLeft
    const sawColumn = active.column !== LABELS && left >= 0 && left < this.#width
    const sawActive = active.row === HEADER || this.#layout.rows.offset(active.row) < this.scroller.scrollTop + this.#height
    this.#layOut()
    this.#scrollTo(keep)
    this.#draw(true)
    if (sawActive && active.row !== HEADER) this.reveal({ row: active.row, column: sawColumn ? active.column : LABELS })
  }

  /** Sizes the content and the pool to the page. */
  #layOut(): void {
    this.#layout.labels = labelWidth(this.scroller.clientWidth)
    this.#layout.pinned = this.session.model.pinned
    this.#layout.pinnedWidth = this.#layout.columns.offset(this.#layout.pinned)
    this.scroller.classList.toggle('has-narrow-labels', this.#layout.labels < 240)
    this.#layout.header = headerHeight(this.session.model.lanes?.count ?? 0)
    this.#content.style.width = `${this.#layout.labels + this.#layout.columns.total}px`
    this.#content.style.height = `${this.#layout.header + this.#layout.rows.total}px`
    this.scroller.style.setProperty('--labels', `${this.#layout.labels}px`)
    this.scroller.classList.toggle('has-lanes', this.session.model.lanes !== undefined)
    this.scroller.style.setProperty('--header', `${this.#layout.header}px`)
    const { width, height } = this.#room()
    this.#height = height
    this.#width = width
    this.#pool.resize(this.#layout.rows.reach(height, spareRows), this.#layout.columns.reach(width, spareColumns), this.#layout.pinned > 0)
  }

  /** What is left for cells beside the pinned header and labels. */
  #room(): { width: number; height: number } {
    return {
      width: Math.max(0, this.scroller.clientWidth - this.#layout.labels),
      height: Math.max(0, this.scroller.clientHeight - this.#layout.header),
    }
  }

  #scrollTo(keep: KeyedScroll | undefined): void {
    if (!keep) {
      this.scroller.scrollLeft = this.#layout.columns.total
      return
    }
    const rows = this.#view!.rows.findIndex(({ key }) => key === keep.row)
    const columns = this.#view!.columns.findIndex(({ key }) => key === keep.column)
    if (rows >= 0) this.scroller.scrollTop = this.#layout.rows.offset(rows) + keep.rowPx
    if (columns >= 0) this.scroller.scrollLeft = this.#layout.columns.offset(columns) + keep.columnPx
  }

  /** Brings the slots to what is in sight; with `all` writes every one of them again. */
  #draw(all: boolean): void {
    const { scrollTop, scrollLeft, classList } = this.scroller
    classList.toggle('is-scrolled-across', scrollLeft > 0)
    classList.toggle('is-scrolled-down', scrollTop > 0)
    const { rows, columns } = this.#layout
    this.#pool.draw(this.#layout, rows.firstOf(scrollTop, this.#pool.rows, spareRows), columns.firstOf(scrollLeft, this.#pool.columns, spareColumns), all)
    if (!all) return
    this.#selection = this.session.selection
    this.#pointAtActive()
  }

  /** Says which element is the current cell, when it is among the drawn ones, and what the editor's menus are about. */
  #pointAtActive(): void {
    const { active, model } = this.session
    const menu = menuOf(model, active)
    setAttribute(this.grid, 'aria-activedescendant', this.#pool.idOf(active))
    setAttribute(this.surface, 'data-vscode-context', JSON.stringify({ ...menu, preventDefaultContextMenuItems: menu.webviewSection !== 'cell' && menu.webviewSection !== 'position' }))
  }

  #tidySoon(): void {
    clearTimeout(this.#tidying)
    this.#tidying = setTimeout(() => this.#pool.tidy(), tidyMs)
  }
}
