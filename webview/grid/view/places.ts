import { Axis, scrollToShow } from '../model/axis'
import type { KeyedScroll } from '../model/savedState'
import { HEADER, LABELS, type Spot } from '../model/spot'
import { headerHeight } from './sizes'

/** Where everything lies: the measures that the slots are placed by, px. */
export interface Layout {
  rows: Axis
  columns: Axis
  /** Width of the label column and height of the header row. */
  labels: number
  header: number
  /** On how many lines the label of each row stands. */
  labelLines: readonly number[]
  /** How many columns stay beside the labels, from the first on, and their width. */
  pinned: number
  pinnedWidth: number
  /** How many rows stay below the header, from the first on, and their height. */
  pinnedRows: number
  pinnedHeight: number
}

/** Where something lies within the scrolled content, in px. */
export interface Box {
  left: number
  top: number
  width: number
  height: number
}

/** How near, in px, to a column's edge the pointer takes hold of it. */
const edgePx = 4

/** How much of the room beside labels and header may be taken by what is pinned. What is more than that scrolls with the others. */
const pinnedShare = 0.6

/** Where the spots of the grid lie in its content and on the page, and which spot lies at a point. */
export class Places {
  readonly layout: Layout = { rows: new Axis([]), columns: new Axis([]), labels: 0, header: headerHeight(0), labelLines: [], pinned: 0, pinnedWidth: 0, pinnedRows: 0, pinnedHeight: 0 }

  constructor(readonly scroller: HTMLElement, readonly content: HTMLElement) {}

  /** Pins so many entries and rows, as far as they leave room for others. */
  pin(columns: number, rows: number): void {
    const { layout } = this
    const { width, height } = this.room()
    layout.pinned = fitting(layout.columns, columns, width * pinnedShare)
    layout.pinnedWidth = layout.columns.offset(layout.pinned)
    layout.pinnedRows = fitting(layout.rows, rows, height * pinnedShare)
    layout.pinnedHeight = layout.rows.offset(layout.pinnedRows)
  }

  /** What is left for cells beside the header and the labels. */
  room(): { width: number; height: number } {
    return {
      width: Math.max(0, this.scroller.clientWidth - this.layout.labels),
      height: Math.max(0, this.scroller.clientHeight - this.layout.header),
    }
  }

  /** Where a spot lies in the content; headers, labels and what is pinned where they are just now. */
  boxOf({ row, column }: Spot): Box {
    const { rows, columns, labels, header, pinned, pinnedRows } = this.layout
    const { scrollLeft, scrollTop } = this.scroller
    return {
      left: column === LABELS ? scrollLeft : labels + columns.offset(column) + (column < pinned ? scrollLeft : 0),
      width: column === LABELS ? labels : columns.size(column),
      top: row === HEADER ? scrollTop : header + rows.offset(row) + (row < pinnedRows ? scrollTop : 0),
      height: row === HEADER ? header : rows.size(row),
    }
  }

  /** What of the content is in sight around a spot, without the header, the labels and, but for its own cells, what is pinned. */
  sight({ row, column }: Spot): Box {
    const { scrollLeft, scrollTop } = this.scroller
    const { labels, header, pinned, pinnedRows } = this.layout
    const across = column < pinned ? 0 : this.layout.pinnedWidth
    const down = row < pinnedRows ? 0 : this.layout.pinnedHeight
    const { width, height } = this.room()
    return { left: scrollLeft + labels + across, top: scrollTop + header + down, width: Math.max(0, width - across), height: Math.max(0, height - down) }
  }

  /** Where a spot lies on the page. */
  rectOf(spot: Spot): DOMRect {
    const box = this.boxOf(spot)
    const { left, top } = this.content.getBoundingClientRect()
    return new DOMRect(left + box.left, top + box.top, box.width, box.height)
  }

  /** The spot under a point of the page; points outside give the nearest one. */
  spotAt(clientX: number, clientY: number): Spot {
    const { left, top } = this.scroller.getBoundingClientRect()
    const { rows, columns, labels, header, pinnedHeight } = this.layout
    const y = clientY - top - header
    return {
      column: clientX - left < labels ? LABELS : columns.at(this.#along(clientX)),
      row: y < 0 ? HEADER : rows.at(y < pinnedHeight ? y : y + this.scroller.scrollTop),
    }
  }

  /** The px along all columns that a point of the page shows: what is pinned does not scroll. */
  #along(clientX: number): number {
    const x = clientX - this.scroller.getBoundingClientRect().left - this.layout.labels
    return x < this.layout.pinnedWidth ? x : x + this.scroller.scrollLeft
  }

  isInHeader(clientX: number, clientY: number): boolean {
    const { left, top } = this.scroller.getBoundingClientRect()
    return clientY - top <= this.layout.header && clientX - left > this.layout.labels
  }

  /** The entry whose right edge is under a point of the header, to be drawn wider, or the labels; undefined where none is. */
  edgeAt(clientX: number, clientY: number): number | undefined {
    const { left, top } = this.scroller.getBoundingClientRect()
    if (clientY - top <= this.layout.header && Math.abs(clientX - left - this.layout.labels) <= edgePx) return LABELS
    if (!this.isInHeader(clientX, clientY)) return undefined
    const { columns } = this.layout
    const x = this.#along(clientX)
    return [columns.at(x), columns.at(x) - 1].find((column) => column >= 0 && Math.abs(columns.offset(column + 1) - x) <= edgePx)
  }

  /** The entry before which something let go of at a point of the page would come; one past the last for the end. Never among what is pinned. */
  gapAt(clientX: number): number {
    const { columns, pinned } = this.layout
    const x = this.#along(clientX)
    const column = Math.max(0, columns.at(x))
    return Math.max(pinned, x > columns.offset(column) + columns.size(column) / 2 ? column + 1 : column)
  }

  /** The first row and column in sight that scroll. */
  keyedScroll(rowKeys: readonly { key: string }[], columnKeys: readonly { key: string }[]): KeyedScroll {
    const { rows, columns, pinnedHeight, pinnedWidth } = this.layout
    const [top, left] = [this.scroller.scrollTop + pinnedHeight, this.scroller.scrollLeft + pinnedWidth]
    const [row, column] = [rows.at(top), columns.at(left)]
    const [rowKey, columnKey] = [rowKeys[row]?.key, columnKeys[column]?.key]
    return {
      ...(rowKey !== undefined && { row: rowKey }), ...(columnKey !== undefined && { column: columnKey }),
      rowPx: top - rows.offset(row), columnPx: left - columns.offset(column),
    }
  }

  /** Brings the row and the column that were first in sight there again, or the newest entry. */
  scrollTo(keep: KeyedScroll | undefined, rowKeys: readonly { key: string }[], columnKeys: readonly { key: string }[]): void {
    const { rows, columns, pinnedHeight, pinnedWidth } = this.layout
    if (!keep) {
      this.scroller.scrollLeft = columns.total
      return
    }
    const row = rowKeys.findIndex(({ key }) => key === keep.row)
    const column = columnKeys.findIndex(({ key }) => key === keep.column)
    if (row >= 0) this.scroller.scrollTop = rows.offset(row) + keep.rowPx - pinnedHeight
    if (column >= 0) this.scroller.scrollLeft = columns.offset(column) + keep.columnPx - pinnedWidth
  }

  /** Scrolls as little as shows the spot whole, and the rows from `head` on above it where it comes in from above. */
  reveal({ row, column }: Spot, head = row): void {
    const { scroller, layout: { rows, columns, pinned, pinnedWidth, pinnedRows, pinnedHeight } } = this
    const { width, height } = this.room()
    if (row !== HEADER && row >= pinnedRows) scroller.scrollTop = scrollToShow(rows, row, scroller.scrollTop + pinnedHeight, height - pinnedHeight, Math.max(head, pinnedRows)) - pinnedHeight
    if (column !== LABELS && column >= pinned) scroller.scrollLeft = scrollToShow(columns, column, scroller.scrollLeft + pinnedWidth, width - pinnedWidth) - pinnedWidth
  }
}

/** How many items from the first on, at most `count`, fit into a length. */
function fitting(axis: Axis, count: number, length: number): number {
  let fit = Math.min(count, axis.count)
  while (fit > 0 && axis.offset(fit) > length) fit--
  return fit
}
