import type { Cell, Column, GridFinding, GridPlace, Row } from '../../../src/core/grid/view'
import type { GridPatch } from '../../../src/protocol'
import { nothingHidden, shownOf, type Hiding } from './hiding'
import { lanesOf } from './lanes'
import { Cells } from './cells'
import { Findings } from './findings'
import { HEADER, isCell, LABELS, type Ground, type Spot } from './spot'
import type { PageView } from './unpackView'

const nothing: PageView = {
  title: '', state: 'ready', columns: [], rows: [], cautions: [],
  cells: new Cells({ cells: new Uint32Array(), marks: new Uint32Array() }, [], { rows: [], columns: [] }), findings: new Findings(new Int32Array(), { wordings: [], names: [] }),
}

/** What a patch touched, so that no more than that is drawn again. */
export interface Touched {
  cells: Spot[]
  columns: number[]
  findings: boolean
  /** How the history branches. */
  lanes: boolean
  /** Title, state, trouble. */
  frame: boolean
}

/** What the host last told, with the way from keys to indices and back. Holds nothing else. */
export class GridModel {
  /** What there is to see: all of it, or what is left when something is hidden. */
  view: Omit<PageView, 'cells'> = nothing
  /** All that the host told. */
  all: PageView = nothing
  hiding: Hiding = nothingHidden
  ground: Ground = { rows: [], columns: 0 }
  /** The drawing of the history; absent where it does not branch. */
  lanes: ReturnType<typeof lanesOf>
  /** How many entries stay beside the labels, from the first on, and how many rows below the header. */
  pinned = 0
  pinnedRows = 0
  #order: readonly number[] = []
  #rowOrder: readonly number[] = []
  #rows = new Map<string, number>()
  #columns = new Map<string, number>()
  #shownRows = new Map<number, number>()
  #shownColumns = new Map<number, number>()

  show(all: PageView): void {
    this.all = all
    const { rows, columns, pinned, pinnedRows } = shownOf(all, this.hiding)
    this.#shownRows = new Map(rows.map((row, index) => [row, index]))
    this.#shownColumns = new Map(columns.map((column, index) => [column, index]))
    this.#order = columns
    this.#rowOrder = rows
    Object.assign(this, { pinned, pinnedRows })
    const isWhole = isAll(rows, all.rows.length) && isAll(columns, all.columns.length)
    const view = this.view = isWhole ? all : {
      ...all, rows: rows.map((row) => all.rows[row]!), columns: columns.map((column) => all.columns[column]!),
    }
    this.ground = { rows: view.rows, columns: view.columns.length }
    this.#rows = new Map(view.rows.map((row, index) => [row.key, index]))
    this.#columns = new Map(view.columns.map((column, index) => [column.key, index]))
    this.lanes = this.#lanes()
  }

  /** Shows what is left when this is hidden. Filters look at what the cells hold now, so that none goes while one works in it. */
  hide(hiding: Hiding): void {
    this.hiding = hiding
    this.show(this.all)
  }

  /** Takes what differs. Undefined when the patch does not fit what is shown: then ask for everything anew. */
  apply(patch: GridPatch): Touched | undefined {
    const { view, all } = this
    const fits = patch.columns.every(([index]) => all.columns[index]) && patch.cells.every(([row, column]) => all.cells.at(row, column))
    if (!fits) return undefined
    const { columns, cells } = this.#shownOf(patch)
    const frame = patch.title !== view.title || patch.state !== view.state || patch.readOnly !== view.readOnly || !sameTrouble(patch, view)
    if (patch.findings) all.findings.take(patch.findings)
    for (const each of new Set([view, all])) Object.assign(each, { title: patch.title, state: patch.state, readOnly: patch.readOnly, trouble: patch.trouble })
    // All old names go before the new ones come: two entries may have changed names with each other.
    for (const [index] of columns) this.#columns.delete(view.columns[index]!.key)
    for (const [index, column] of patch.columns) all.columns[index] = column
    for (const [row, column, cell] of patch.cells) all.cells.put(row, column, cell)
    for (const [index, column] of columns) {
      view.columns[index] = column
      this.#columns.set(column.key, index)
    }
    const drawn = patch.columns.length > 0 ? this.#lanes() : this.lanes
    const lanes = drawn !== this.lanes && JSON.stringify(drawn) !== JSON.stringify(this.lanes)
    this.lanes = drawn
    return {
      cells: cells.map(([row, column]) => ({ row, column })),
      columns: columns.map(([index]) => index),
      findings: patch.findings !== undefined,
      lanes, frame,
    }
  }

  /** What of a patch is among what is shown, by its indices there. */
  #shownOf({ columns, cells }: Pick<GridPatch, 'columns' | 'cells'>): Pick<GridPatch, 'columns' | 'cells'> {
    return {
      columns: columns.flatMap(([index, column]) => {
        const at = this.#shownColumns.get(index)
        return at === undefined ? [] : [[at, column] as [number, Column]]
      }),
      cells: cells.flatMap(([row, column, cell]) => {
        const [y, x] = [this.#shownRows.get(row), this.#shownColumns.get(column)]
        return y === undefined || x === undefined ? [] : [[y, x, cell] as [number, number, Cell]]
      }),
    }
  }

  /** With entries hidden or out of order the lines would lead from one to another that it does not come from. */
  #lanes(): ReturnType<typeof lanesOf> {
    return isAll(this.#order, this.all.columns.length) ? lanesOf(this.view.columns) : undefined
  }

  /** The place among all entries of one that is shown. */
  inAll(column: number): number {
    return this.#order[column] ?? column
  }

  /** Whether the notebook has such a place, shown or hidden. */
  isHidden({ row, column }: { row?: string | undefined; column?: string | undefined }): boolean {
    const known = (row === undefined || this.all.rows.some(({ key }) => key === row)) && (column === undefined || this.all.columns.some(({ key }) => key === column))
    return known && this.spotOf({ row, column }) === undefined
  }

  row(index: number): Row | undefined {
    return this.view.rows[index]
  }

  column(index: number): Column | undefined {
    return this.view.columns[index]
  }

  cell({ row, column }: Spot): Cell | undefined {
    const [y, x] = [this.#rowOrder[row], this.#order[column]]
    return y === undefined || x === undefined ? undefined : this.all.cells.at(y, x)
  }

  finding(id: number): GridFinding | undefined {
    return this.all.findings.get(id)
  }

  /** Findings by ids, in the given order; ids that are not known are left out. */
  findingsOf(ids: readonly number[] | undefined): GridFinding[] {
    return (ids ?? []).flatMap((id) => this.all.findings.get(id) ?? [])
  }

  /** The findings about a cell, or about an entry as a whole when it is a header. */
  findingsAt(spot: Spot): GridFinding[] {
    return this.findingsOf(spot.row === HEADER ? this.column(spot.column)?.findings : this.cell(spot)?.findings)
  }

  placeOf(spot: Spot): GridPlace | undefined {
    const row = this.row(spot.row)
    const column = this.column(spot.column)
    return isCell(spot) && row && column ? { row: row.key, column: column.key } : undefined
  }

  /** The spot of a place; a missing key in `place` means the header or the label. Undefined when the key is unknown. */
  spotOf(place: { row?: string | undefined; column?: string | undefined }): Spot | undefined {
    const row = place.row === undefined ? HEADER : this.#rows.get(place.row)
    const column = place.column === undefined ? LABELS : this.#columns.get(place.column)
    return row === undefined || column === undefined ? undefined : { row, column }
  }

  /** The heading above a row; a pinned one has none. */
  groupOf(row: number): Row | undefined {
    for (let index = row; index >= this.pinnedRows; index--) if (this.view.rows[index]?.kind === 'group') return this.view.rows[index]
    return undefined
  }

  /** Whether anything can be written, as a whole. */
  get writable(): boolean {
    return this.view.state === 'ready' && this.view.readOnly === undefined
  }
}

const isAll = (indices: readonly number[], count: number) => indices.length === count && indices.every((index, at) => index === at)

function sameTrouble(a: Pick<PageView, 'trouble'>, b: Pick<PageView, 'trouble'>): boolean {
  return a.trouble?.message === b.trouble?.message && a.trouble?.line === b.trouble?.line
}
