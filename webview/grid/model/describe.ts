import type { Cell, Column, GridFinding, Row } from '../../../src/core/grid/view'
import { say } from '../strings'
import type { GridModel } from './gridModel'
import { parentOf } from './lanes'
import type { Pending } from './pending'
import { HEADER, LABELS, type Spot } from './spot'

/** How places are named and told, on the screen and to a screen reader. */

export const rowName = (row: Row) => [row.label, row.detail].filter(Boolean).join(' ')

/** `Rebound left, run-3`; an entry's or a row's name alone for a header or a label. */
export function spotName(model: GridModel, { row, column }: Spot): string {
  const rowPart = row === HEADER ? undefined : model.row(row)
  const columnPart = column === LABELS ? undefined : model.column(column)
  if (rowPart && columnPart) return say('cell.place', rowName(rowPart), columnPart.id)
  return rowPart ? rowName(rowPart) : (columnPart?.id ?? '')
}

/** A bare figure, one with its uncertainty, or several one after the other. */
const figures = /^[-+−]?[\d.,]+(?: ± [\d.]+)?$|^[-+−]?[\d.]+(?:, [-+−]?[\d.]+)+$/

/** A unit is said with bare figures only: a text such as `3 out` has its own. */
export const withUnit = (text: string, unit: string | undefined) => (unit && figures.test(text) ? `${text} ${unit}` : text)

/** What is read first: the text, then the unit, then where it stands. */
export function spokenName(model: GridModel, spot: Spot, pending: Pending | undefined): string {
  const row = model.row(spot.row)
  const cell = model.cell(spot)
  if (!cell || !row) return spotName(model, spot)
  const text = (pending?.text ?? cell.text) || say('cell.empty')
  return [withUnit(text, row.unit), spotName(model, spot)].join(', ')
}

/** What is read after the name: where the value comes from, what is wrong, what a person remarked. */
export function spokenMore(model: GridModel, spot: Spot, pending: Pending | undefined): string {
  const { row, column } = spot
  const parts: (string | undefined)[] = []
  const cell = model.cell(spot)
  if (cell) {
    parts.push(stateName(cell), pending && pendingName(pending))
    parts.push(cell.about, cell.remark && say('cell.remark', cell.remark))
  }
  if (row === HEADER) parts.push(...headerMore(model.column(column)), ...(column >= 0 && column < model.pinned ? [say('entry.pinned')] : []), ...historyMore(model, column))
  if (column === LABELS) parts.push(row >= 0 && row < model.pinnedRows ? say('row.pinned') : undefined, model.row(row)?.about)
  parts.push(...model.findingsAt(spot).map(findingName))
  return parts.filter(Boolean).join('. ')
}

export function findingName({ severity, message }: Pick<GridFinding, 'severity' | 'message'>): string {
  return `${say(`severity.${severity}`)}: ${message}`
}

/** The facts under an entry's id: its date and what it is. */
export function headerMore(column: Column | undefined): string[] {
  if (!column) return []
  return [
    column.date,
    column.asFound ? say('entry.asFound') : '',
    column.baseline ? say('entry.baseline') : '',
  ].filter(Boolean)
}

/**
 * Where an entry comes from and what comes from it. Where the history branches this is said of every entry; else only
 * what is written.
 */
export function historyMore(model: GridModel, at: number): string[] {
  const { columns } = model.all
  const place = model.inAll(at)
  const column = model.column(at)
  if (!column) return []
  const parent = column.from ?? parentOf(columns, place)
  const heirs = column.branch?.heirs ?? []
  const goesOnAlone = heirs.length === 1 && heirs[0] === columns[place + 1]?.key
  return [
    parent ? say('entry.from', parent) : '',
    heirs.length > 0 && !goesOnAlone ? say('entry.heirs', heirs.join(', ')) : '',
    model.lanes?.marks[at]?.left ? say('entry.left') : '',
  ].filter(Boolean)
}

function stateName(cell: Cell): string | undefined {
  if (cell.state === 'computed') return say('cell.computed')
  if (cell.state === 'carried') return say('cell.carried')
  return cell.changed ? say('cell.changed') : undefined
}

function pendingName({ state, why }: Pending): string {
  return state === 'refused' ? say('refused.title', why ?? '') : say('cell.pending')
}
