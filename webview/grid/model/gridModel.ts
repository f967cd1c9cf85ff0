import type { Cell, Column, GridFinding, GridPlace, GridView, Row } from '../../../src/core/grid/view'
import type { GridPatch } from '../../../src/protocol'
import { lanesOf } from './lanes'
import { HEADER, isCell, LABELS, type Ground, type Spot } from './spot'

const nothing: GridView = { title: '', state: 'ready', columns: [], rows: [], cells: [], findings: [], cautions: [] }

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
  view: GridView = nothing
  ground: Ground = { rows: [], columns: 0 }
  /** The drawing of the history; absent where it does not branch. */
  lanes: ReturnType<typeof lanesOf>
  #rows = new Map<string, number>()
  #columns = new Map<string, number>()
  #findings = new Map<number, GridFinding>()

  show(view: GridView): void {
    this.view = view
    this.ground = { rows: view.rows, columns: view.columns.length }
    this.#rows = new Map(view.rows.map((row, index) => [row.key, index]))
    this.#columns = new Map(view.columns.map((column, index) => [column.key, index]))
    this.lanes = lanesOf(view.columns)
    this.#takeFindings(view.findings)
  }

  /** Takes what differs. Undefined when the patch does not fit what is shown: then ask for everything anew. */
  apply(patch: GridPatch): Touched | undefined {
    const { view } = this
    const fits = patch.columns.every(([index]) => view.columns[index]) && patch.cells.every(([row, column]) => view.cells[row]?.[column])
    if (!fits) return undefined
    const frame = patch.title !== view.title || patch.state !== view.state || patch.readOnly !== view.readOnly || !sameTrouble(patch, view)
    Object.assign(view, { title: patch.title, state: patch.state, readOnly: patch.readOnly, trouble: patch.trouble })
    // All old names go before the new ones come: two entries may have changed names with each other.
    for (const [index] of patch.columns) this.#columns.delete(view.columns[index]!.key)
    for (const [index, column] of patch.columns) {
      view.columns[index] = column
      this.#columns.set(column.key, index)
    }
    const drawn = patch.columns.length > 0 ? lanesOf(view.columns) : this.lanes
    const lanes = drawn !== this.lanes && JSON.stringify(drawn) !== JSON.stringify(this.lanes)
    this.lanes = drawn
    for (const [row, column, cell] of patch.cells) view.cells[row]![column] = cell
    if (patch.findings) {
      view.findings = patch.findings
      this.#takeFindings(patch.findings)
    }
    return {
      cells: patch.cells.map(([row, column]) => ({ row, column })),
      columns: patch.columns.map(([index]) => index),
      findings: patch.findings !== undefined,
      lanes, frame,
    }
  }

  row(index: number): Row | undefined {
    return this.view.rows[index]
  }

  column(index: number): Column | undefined {
    return this.view.columns[index]
  }

  cell({ row, column }: Spot): Cell | undefined {
    return this.view.cells[row]?.[column]
  }

  finding(id: number): GridFinding | undefined {
    return this.#findings.get(id)
  }

  /** Findings by ids, in the given order; ids that are not known are left out. */
  findingsOf(ids: readonly number[] | undefined): GridFinding[] {
    return (ids ?? []).flatMap((id) => this.#findings.get(id) ?? [])
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

  /** The heading above a row. */
  groupOf(row: number): Row | undefined {
    for (let index = row; index >= 0; index--) if (this.view.rows[index]?.kind === 'group') return this.view.rows[index]
    return undefined
  }

  /** Whether anything can be written, as a whole. */
  get writable(): boolean {
    return this.view.state === 'ready' && this.view.readOnly === undefined
  }

  #takeFindings(findings: GridFinding[]): void {
    this.#findings = new Map(findings.map((finding) => [finding.id, finding]))
  }
}

function sameTrouble(a: Pick<GridView, 'trouble'>, b: Pick<GridView, 'trouble'>): boolean {
  return a.trouble?.message === b.trouble?.message && a.trouble?.line === b.trouble?.line
}
