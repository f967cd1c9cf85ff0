import type { Row } from '../../../src/core/grid/view'
import { blockOf, inBlock, type Selection } from '../model/selection'
import type { Session } from '../model/session'
import { HEADER, LABELS, type Spot } from '../model/spot'
import { make } from './dom'
import { lookOf, paintCell, paintHeader, paintLabel, type Look } from './paint'
import { HeaderSlot } from './headerSlot'
import type { Layout } from './places'
import { RowSlot, Slot } from './slots'

/** The index of a row slot whose place on the page is yet to be set. */
const unplaced = -2

interface Drawing {
  layout: Layout
  firstColumn: number
  all: boolean
  look: Look
}

/**
 * The recycled elements of the grid. Item i sits in slot i modulo the pool's length, so that one step of scrolling
 * moves and rewrites one row or one column of slots, and the number of elements depends on the page alone.
 */
export class Pool {
  readonly #header = new RowSlot<HeaderSlot>('columnheader', () => new HeaderSlot())
  readonly #rows: RowSlot[] = []
  /** The rows that stay below the header, in an element that does. */
  readonly #pinned: RowSlot[] = []
  readonly #frozen = make('div', 'frozen')
  #layout: Layout | undefined
  /** All labels, to be pinned as one: pinned one by one, each would be a layer to put together in every frame. */
  readonly labels = make('div', 'labels')
  #columns = 0
  #owns = ''

  constructor(readonly session: Session, readonly grid: HTMLElement) {
    this.#header.className = 'row header-row'
    this.#header.element.prepend(this.#header.label.element)
    grid.append(this.#header.element, this.#frozen)
  }

  get rows(): number {
    return this.#rows.length
  }

  get columns(): number {
    return this.#columns
  }

  /** Has as many slots as asked for, and every one of them placed anew when it is drawn next. */
  resize(rows: number, columns: number, layout: Layout): void {
    const { pinned, pinnedRows } = layout
    this.#columns = columns
    this.#layout = layout
    stretch(this.#rows, rows, ({ element, label }) => {
      this.grid.append(element)
      this.labels.append(label.element)
    })
    stretch(this.#pinned, pinnedRows, ({ element, label }) => {
      element.append(label.element)
      this.#frozen.append(element)
    })
    for (const row of this.#all) {
      row.index = unplaced
      row.stretch(columns)
      row.pinIn(this.#rows.includes(row as RowSlot) ? this.labels : row.element, pinned)
    }
  }

  get #all(): readonly RowSlot[] {
    return [this.#header, ...this.#pinned, ...this.#rows]
  }

  /** The slot that would show a row. */
  #slotOf(row: number): RowSlot | undefined {
    return row === HEADER ? this.#header : this.#pinned[row] ?? this.#rows[row % this.#rows.length]
  }

  /** Brings the slots to the rows and columns from the given first ones on; with `all` writes each of them again. */
  draw(layout: Layout, firstRow: number, firstColumn: number, all: boolean): void {
    const drawing = { layout, firstColumn, all, look: lookOf(this.session, layout) }
    this.#drawRow(this.#header, HEADER, drawing)
    this.#pinned.forEach((slot, row) => this.#drawRow(slot, row, drawing))
    for (let row = firstRow; row < firstRow + this.#rows.length; row++) {
      const slot = this.#rows[row % this.#rows.length]!
      const isNew = slot.index === unplaced
      slot.conceal(row < layout.pinnedRows)
      if (row < layout.pinnedRows) slot.index = unplaced
      else this.#drawRow(slot, row, drawing)
      // What is shown again is owned by its row at once.
      if (isNew) slot.tidy()
    }
  }

  /** Draws single cells and headers again, those of them that are in sight. */
  drawSome(spots: readonly Spot[], columns: readonly number[]): void {
    const look = lookOf(this.session, this.#layout)
    for (const { row, column } of spots) {
      const slot = this.#slotOf(row)
      if (slot?.index !== row) continue
      for (const cell of slot.drawn) if (cell.index === column) paintCell(cell, row, column, look)
    }
    for (const column of columns) {
      for (const slot of this.#header.drawn) if (slot.index === column) paintHeader(slot, column, look)
    }
  }

  /** Draws again what two selections, the one before and the one now, differ in. */
  drawSelection(before: Selection, now: Selection): void {
    const look = lookOf(this.session, this.#layout)
    const blocks = [blockOf(before), blockOf(now)]
    const isTouched = (row: number, column: number) => blocks.some((block) => inBlock(block, row, column))
    for (const slot of this.#all) {
      const row = slot.index
      if (row === unplaced) continue
      if (row === before.active.row || row === now.active.row || isTouched(row, LABELS)) paintLabel(slot.label, row, look)
      for (const cell of slot.drawn) {
        const column = cell.index
        if (column < 0) continue
        if (row === HEADER && (column === before.active.column || column === now.active.column)) paintHeader(cell as HeaderSlot, column, look)
        else if (row !== HEADER && isTouched(row, column) && this.session.model.row(row)?.kind !== 'group') paintCell(cell, row, column, look)
      }
    }
  }

  /** Puts rows and cells into reading order; they are in any while one scrolls. */
  tidy(): void {
    const rows = [...this.#all].sort((a, b) => a.index - b.index)
    for (const row of rows) row.tidy()
    const owns = rows.map(({ id }) => id).join(' ')
    if (owns !== this.#owns) this.grid.setAttribute('aria-owns', owns)
    this.#owns = owns
  }

  /** The id of the element that shows a spot, when one does. */
  idOf({ row, column }: Spot): string | undefined {
    const slot = this.#slotOf(row)
    if (slot?.index !== row) return undefined
    if (column === LABELS) return slot.label.id
    return slot.drawn.find(({ index }) => index === column)?.id
  }

  #drawRow(slot: RowSlot, row: number, drawing: Drawing): void {
    const { layout, firstColumn, all, look } = drawing
    const facts = this.session.model.row(row)
    const moved = slot.index !== row
    if (moved) this.#placeRow(slot, row, facts, layout)
    if (moved || all) paintLabel(slot.label, row, look)
    if (moved || all) for (const { element } of slot.pins) element.hidden = facts?.kind === 'group'
    if (facts?.kind === 'group') return
    if (moved || all) slot.pins.forEach((pin, column) => this.#drawCell(pin, { row, column }, layout.labels + layout.columns.offset(column), drawing))
    for (let column = firstColumn; column < firstColumn + this.#columns; column++) {
      const cell = slot.cells[column % this.#columns]!
      if (cell.index === column && !moved && !all) continue
      if (column >= layout.pinned) this.#drawCell(cell, { row, column }, layout.labels + layout.columns.offset(column), drawing)
      else spare(cell)
    }
  }

  #drawCell(cell: Slot, { row, column }: Spot, left: number, { layout, look }: Drawing): void {
    cell.index = column
    cell.place(left, layout.columns.size(column))
    if (row === HEADER) paintHeader(cell as HeaderSlot, column, look)
    else paintCell(cell, row, column, look)
  }

  #placeRow(slot: RowSlot, row: number, facts: Row | undefined, layout: Layout): void {
    slot.index = row
    slot.element.setAttribute('aria-rowindex', String(row + 2))
    if (!facts) return
    slot.className = `row row-${facts.kind}`
    const top = layout.rows.offset(row)
    if (row < layout.pinnedRows) {
      Object.assign(slot.element.style, { top: `${top}px`, height: `${layout.rows.size(row)}px` })
      return slot.element.style.setProperty('--row', `${layout.rows.size(row)}px`)
    }
    const height = `${layout.rows.size(row)}px`
    Object.assign(slot.element.style, { top: `${layout.header + top}px`, height })
    for (const { element } of [slot.label, ...slot.pins]) Object.assign(element.style, { top: `${top}px`, height })
  }
}

/** Has as many rows as asked for, new ones put into the page by `place`. */
function stretch(rows: RowSlot[], count: number, place: (row: RowSlot) => void): void {
  while (rows.length < count) {
    const row = new RowSlot('rowheader', () => new Slot('gridcell'))
    rows.push(row)
    place(row)
  }
  for (const spare of rows.splice(count)) spare.remove()
}

/** A slot that would show what is pinned already shows nothing. */
function spare(cell: Slot): void {
  cell.index = -1
  cell.className = 'cell is-spare'
}
