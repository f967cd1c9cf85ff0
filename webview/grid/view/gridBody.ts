import { say } from '../strings'
import { Axis } from '../model/axis'
import type { KeyedScroll } from '../model/savedState'
import { only } from '../model/selection'
import type { Session } from '../model/session'
import { HEADER, LABELS, type Spot } from '../model/spot'
import type { PageView } from '../model/unpackView'
import { menuOf } from '../model/menuOf'
import { make, setAttribute } from './dom'
import { labelLines, labelsWidth } from '../model/labels'
import { measureIn } from './measureText'
import { Places, type Box } from './places'
import { Pool } from './pool'
import { headerHeight, rowHeight, widthOf } from './sizes'

/** Rows and columns kept ready beyond each edge of what is in sight, so that scrolling never shows a gap. */
const spareRows = 4
const spareColumns = 3

/** How long, in ms, scrolling has to rest before the elements are put in reading order. */
const tidyMs = 200

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
  #view: Pick<PageView, 'rows' | 'columns'> | undefined
  /** The selection as it is drawn. */
  #selection = only({ row: HEADER, column: LABELS })
  readonly places = new Places(this.scroller, this.#content)
  readonly #layout = this.places.layout
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
    this.#layout.columns = new Axis(view.columns.map((column) => widthOf(column, this.session.widths)))
    setAttribute(this.grid, 'aria-rowcount', String(view.rows.length + 1))
    setAttribute(this.grid, 'aria-colcount', String(view.columns.length + 1))
    this.#frame()
    this.#layOut()
    this.places.scrollTo(keep, view.rows, view.columns)
    this.#draw(true)
    this.#pool.tidy()
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

  /** Scrolls as little as shows the spot whole. A group's first row that comes in from above brings its heading along. */
  reveal(spot: Spot, withHeading = true): void {
    const hasHeading = withHeading && this.session.model.row(spot.row)?.kind !== 'group' && this.session.model.row(spot.row - 1)?.kind === 'group'
    this.places.reveal(spot, hasHeading ? spot.row - 1 : spot.row)
    this.#draw(false)
    this.#pointAtActive()
  }

  /** The row a screenful away. */
  pageFrom = (row: number, down: boolean): number => {
    const height = this.places.room().height - this.#layout.pinnedHeight
    return this.#layout.rows.at(this.#layout.rows.offset(Math.max(row, 0)) + (down ? height : -height))
  }

  boxOf = (spot: Spot): Box => this.places.boxOf(spot)
  sight = (spot: Spot): Box => this.places.sight(spot)
  rectOf = (spot: Spot): DOMRect => this.places.rectOf(spot)
  spotAt = (clientX: number, clientY: number): Spot => this.places.spotAt(clientX, clientY)

  keyedScroll(): KeyedScroll {
    return this.places.keyedScroll(this.#view?.rows ?? [], this.#view?.columns ?? [])
  }

  #frame(): void {
    const { model } = this.session
    setAttribute(this.grid, 'aria-label', say('grid.name', model.view.title || say('bar.untitled')))
    setAttribute(this.grid, 'aria-readonly', model.writable ? undefined : 'true')
    setAttribute(this.grid, 'aria-disabled', model.view.state === 'broken' ? 'true' : undefined)
  }

  /** Laying out for what is as it was would cost as much as the first drawing of all. */
  #isResized(): boolean {
    const { width, height } = this.places.room()
    return width !== this.#width || height !== this.#height
  }

  /** A current cell that was in sight stays so, also when a panel opens over it. */
  #resize(): void {
    if (!this.#view || !this.#isResized()) return
    const keep = this.keyedScroll()
    const { active } = this.session
    const left = active.column === LABELS ? 0 : this.#layout.columns.offset(active.column) - this.scroller.scrollLeft
    const sawColumn = active.column !== LABELS && left >= 0 && left < this.#width
    const sawActive = active.row === HEADER || this.#layout.rows.offset(active.row) < this.scroller.scrollTop + this.#height
    this.#layOut()
    this.places.scrollTo(keep, this.#view.rows, this.#view.columns)
    this.#draw(true)
    this.#pool.tidy()
    if (sawActive && active.row !== HEADER) this.reveal({ row: active.row, column: sawColumn ? active.column : LABELS })
  }

  /** Sizes the content and the pool to the page. */
  #layOut(): void {
    this.#layOutLabels()
    this.#layout.header = headerHeight(this.session.model.lanes?.count ?? 0)
    this.#content.style.width = `${this.#layout.labels + this.#layout.columns.total}px`
    this.#content.style.height = `${this.#layout.header + this.#layout.rows.total}px`
    this.scroller.style.setProperty('--labels', `${this.#layout.labels}px`)
    this.scroller.classList.toggle('has-lanes', this.session.model.lanes !== undefined)
    this.scroller.style.setProperty('--header', `${this.#layout.header}px`)
    this.places.pin(this.session.model.pinned, this.session.model.pinnedRows)
    this.scroller.classList.toggle('has-frozen', this.#layout.pinnedRows > 0)
    this.scroller.style.setProperty('--frozen', `${this.#layout.pinnedHeight}px`)
    const { width, height } = this.places.room()
    this.#height = height
    this.#width = width
    this.#pool.resize(this.#layout.rows.reach(height, spareRows), this.#layout.columns.reach(width, spareColumns), this.#layout)
  }

  /** All labels count, also those that are hidden, so that their column stays as it is while one filters and folds. */
  #layOutLabels(): void {
    const { model, labels } = this.session
    const measure = measureIn(this.#content)
    const { rows } = model.view
    const width = labelsWidth(model.all.rows, this.scroller.clientWidth, labels.drawn, measure)
    const lines = rows.map((row) => labelLines(row, width, measure))
    labels.shown = width
    Object.assign(this.#layout, { labels: width, labelLines: lines, rows: new Axis(rows.map((row, index) => rowHeight(row, lines[index]!))) })
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
