import { say } from '../strings'
import { spotName } from './describe'
import { whyNotEdited } from './editing'
import { uncover } from './hide'
import { nothingHidden, shownOf } from './hiding'
import type { Session } from './session'
import { LABELS } from './spot'
import type { PageView } from './unpackView'
import { sendTexts } from './write'

/** What a person looks for in the grid. */
export interface Sought {
  open: boolean
  text: string
  replacement: string
}

/** A place that holds the text: a cell, an entry's header (no row), or a row's label (no column). */
export interface Match {
  row?: string
  column?: string
}

/** All places of a view that hold a text, in whatever case, in reading order: headers, then row by row. */
export function findMatches(view: PageView, text: string): Match[] {
  const wanted = text.trim().toLowerCase()
  if (wanted === '') return []
  const has = (...texts: (string | undefined)[]) => texts.some((each) => each !== undefined && each.toLowerCase().includes(wanted))
  const headers = view.columns.flatMap(({ key, id, date, reason }) => (has(id, date, reason) ? [{ column: key }] : []))
  const cells = view.rows.flatMap(({ key, label, detail }, row) => [
    ...(has(label, detail && `${label} ${detail}`) ? [{ row: key }] : []),
    ...view.columns.flatMap((column, at) => (has(view.cells.said(row, at)?.text) ? [{ row: key, column: column.key }] : [])),
  ])
  return [...headers, ...cells]
}

/** What is filtered away is not looked in, as in spreadsheets; what is merely folded or far away is. */
function found({ model, find }: Session): Match[] {
  const { rows, columns } = shownOf(model.all, { ...model.hiding, folded: nothingHidden.folded })
  const keep = new Set([...rows.map((row) => model.all.rows[row]!.key), undefined])
  const entries = new Set([...columns.map((column) => model.all.columns[column]!.key), undefined])
  return findMatches(model.all, find.text).filter(({ row, column }) => keep.has(row) && entries.has(column))
}

/** Opens the field to look for something in, or closes it and goes back to the grid. */
export function openFind(session: Session, open: boolean): void {
  session.find = { ...session.find, open }
  session.ports.changed({ kind: 'find', focus: open })
  if (!open) session.ports.changed({ kind: 'focus' })
}

/** Goes to the next place that holds the text, round and round; also where it is folded or far away. */
export function findNext(session: Session, back = false, { stay = false } = {}): void {
  const { model, find } = session
  const matches = found(session)
  if (matches.length === 0) return session.ports.announce(say('find.none', find.text), 'polite')
  const here = session.keyed(session.active)
  const rank = (match: Match) => rankOf(model.all, match)
  const at = rank(here)
  const ahead = back ? [...matches].reverse().find((match) => rank(match) < at) : matches.find((match) => (stay ? rank(match) >= at : rank(match) > at))
  const match = ahead ?? (back ? matches.at(-1)! : matches[0]!)
  const spot = uncover(session, match)
  if (!spot) return
  session.select(spot)
  session.ports.announce(`${say('find.at', matches.indexOf(match) + 1, matches.length)} ${spotName(model, spot)}`, 'polite')
  session.ports.changed({ kind: 'find', focus: false })
}

/** In reading order: a header before all rows, a label before the cells of its row. */
function rankOf({ rows, columns }: Pick<PageView, 'rows' | 'columns'>, { row, column }: Match): number {
  const y = row === undefined ? -1 : rows.findIndex(({ key }) => key === row)
  const x = column === undefined ? LABELS : columns.findIndex(({ key }) => key === column)
  return (y + 1) * (columns.length + 1) + x + 1
}

/** The number of the current place among those found, from 1, and how many there are. */
export function foundAt(session: Session): [at: number, of: number] {
  const here = session.keyed(session.active)
  const matches = found(session)
  return [matches.findIndex(({ row, column }) => row === here.row && column === here.column) + 1, matches.length]
}

/** Writes the replacement into the current cell, if it holds the text, and goes on to the next. */
export function replaceOne(session: Session): void {
  const { activePlace, model } = session
  const text = activePlace && model.cell(session.active)?.text
  if (activePlace && text !== undefined && text.toLowerCase().includes(session.find.text.trim().toLowerCase())) {
    const why = whyNotEdited(model, session.active)
    if (why !== undefined) session.ports.announce(why, 'shown')
    else sendTexts(session, [{ ...activePlace, text: replaced(text, session.find) }])
  }
  findNext(session)
}

/** Replaces in all cells that can be written and are not filtered away, as one gesture. */
export function replaceAll(session: Session): void {
  const { model, find } = session
  if (!model.writable) return session.ports.announce(whyNotEdited(model, session.active) ?? '', 'shown')
  const rows = new Map(model.all.rows.map((row, index) => [row.key, { row, index }]))
  const columns = new Map(model.all.columns.map(({ key }, index) => [key, index]))
  const cells = found(session).flatMap(({ row, column }) => {
    const found = row === undefined ? undefined : rows.get(row)
    const cell = found && column !== undefined ? model.all.cells.said(found.index, columns.get(column)!) : undefined
    // What is carried changes where it was set.
    return cell?.state === 'set' ? [{ row: row!, column: column!, text: replaced(cell.text, find) }] : []
  })
  if (cells.length > 0) sendTexts(session, cells)
  session.ports.announce(say('find.replaced', cells.length), 'polite')
  session.ports.changed({ kind: 'find', focus: false })
}

/** Every occurrence, in whatever case; the replacement is taken as it is. */
export function replaced(text: string, { text: wanted, replacement }: Pick<Sought, 'text' | 'replacement'>): string {
  const literal = wanted.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
  return literal === '' ? text : text.replace(new RegExp(literal, 'gi'), () => replacement)
}
