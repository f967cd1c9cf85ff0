import type { Row } from '../../../src/core/grid/view'
import type { Axis } from '../model/axis'
import { blockOf, inBlock, type Selection } from '../model/selection'
import type { Session } from '../model/session'
import { HEADER, LABELS, type Spot } from '../model/spot'
import { make } from './dom'
import { lookOf, paintCell, paintHeader, paintLabel, type Look } from './paint'
import { HeaderSlot } from './headerSlot'
import { RowSlot, Slot } from './slots'

/** The index of a row slot whose place on the page is yet to be set. */
const unplaced = -2

/** Where everything lies: the measures that the slots are placed by. */
export interface Layout {
  rows: Axis
  columns: Axis
  /** Width of the label column, px. */
  labels: number
  /** Height of the header row, px. */
  header: number
  /** How many columns stay beside the labels, from the first on, and their width, px. */
  pinned: 0 | 1
  pinnedWidth: number
}

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
  /** All labels, to be pinned as one: pinned one by one, each would be a layer to put together in every frame. */
  readonly labels = make('div', 'labels')
  #columns = 0
  #owns = ''

  constructor(readonly session: Session, readonly grid: HTMLElement) {
    this.#header.className = 'row header-row'
    this.#header.element.prepend(this.#header.label.element)
    grid.append(this.#header.element)
  }

  get rows(): number {
    return this.#rows.length
  }

  get columns(): number {
    return this.#columns
  }

  /** Has as many slots as asked for, and every one of them placed anew when it is drawn next. */
  resize(rows: number, columns: number, pinned: boolean): void {
    this.#columns = columns
    while (this.#rows.length < rows) {
      const row = new RowSlot('rowheader', () => new Slot('gridcell'))
      this.#rows.push(row)
      this.grid.append(row.element)
      this.labels.append(row.label.element)
    }
    for (const spare of this.#rows.splice(rows)) {
      spare.element.remove()
      spare.label.element.remove()
    }
    for (const row of [this.#header, ...this.#rows]) {
      row.index = unplaced
      row.stretch(columns)
      row.pinIn(pinned ? (row === this.#header ? row.element : this.labels) : undefined)
    }
    this.tidy()
  }

  /** Brings the slots to the rows and columns from the given first ones on; with `all` writes each of them again. */
  draw(layout: Layout, firstRow: number, firstColumn: number, all: boolean): void {
    const drawing = { layout, firstColumn, all, look: lookOf(this.session) }
    this.#drawRow(this.#header, HEADER, drawing)
    for (let row = firstRow; row < firstRow + this.#rows.length; row++) {
      this.#drawRow(this.#rows[row % this.#rows.length]!, row, drawing)
    }
  }

  /** Draws single cells and headers again, those of them that are in sight. */
  drawSome(spots: readonly Spot[], columns: readonly number[]): void {
    const look = lookOf(this.session)
    for (const { row, column } of spots) {
      const slot = this.#rows[row % this.#rows.length]
      if (slot?.index !== row) continue
      for (const cell of slot.drawn) if (cell.index === column) paintCell(cell, row, column, look)
    }
    for (const column of columns) {
      for (const slot of this.#header.drawn) if (slot.index === column) paintHeader(slot, column, look)
    }
  }

  /** Draws again what two selections, the one before and the one now, differ in. */
  drawSelection(before: Selection, now: Selection): void {
    const look = lookOf(this.session)
    const blocks = [blockOf(before), blockOf(now)]
    const isTouched = (row: number, column: number) => blocks.some((block) => inBlock(block, row, column))
    for (const slot of [this.#header, ...this.#rows]) {
      const row = slot.index
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
    const rows = [this.#header, ...[...this.#rows].sort((a, b) => a.index - b.index)]
    for (const row of rows) row.tidy()
    const owns = rows.map(({ id }) => id).join(' ')
    if (owns !== this.#owns) this.grid.setAttribute('aria-owns', owns)
    this.#owns = owns
  }

  /** The id of the element that shows a spot, when one does. */
  idOf({ row, column }: Spot): string | undefined {
    const slot = row === HEADER ? this.#header : this.#rows[row % this.#rows.length]
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
    if (slot.pin) slot.pin.element.hidden = facts?.kind === 'group'
    if (facts?.kind === 'group') return
    if (slot.pin && (moved || all)) this.#drawCell(slot.pin, { row, column: 0 }, layout.labels, drawing)
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
    const height = `${layout.rows.size(row)}px`
    Object.assign(slot.element.style, { top: `${layout.header + top}px`, height })
    for (const pinned of [slot.label, slot.pin]) if (pinned) Object.assign(pinned.element.style, { top: `${top}px`, height })
  }
}

/** A slot that would show what is pinned already shows nothing. */
function spare(cell: Slot): void {
  cell.index = -1
  cell.className = 'cell is-spare'
}
