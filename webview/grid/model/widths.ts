import { say } from '../strings'
import { blockOf } from './selection'
import type { Session } from './session'
import { LABELS } from './spot'

/** The widths that entries may be given, in CSS px, and how much a key widens or narrows them. */
export const usualWidth = 136
const narrowest = 64
const widest = 640
const step = 16

/** Gives an entry's column a width, or the column of labels; an entry's usual one is not remembered. */
export function setWidth(session: Session, column: number, width: number): void {
  if (column === LABELS) return setLabels(session, Math.round(Math.max(narrowest, Math.min(widest, width))))
  const key = session.model.column(column)?.key
  if (key === undefined) return
  const wanted = Math.round(Math.max(narrowest, Math.min(widest, width)))
  if (wanted === (session.widths.get(key) ?? usualWidth)) return
  if (wanted === usualWidth) session.widths.delete(key)
  else session.widths.set(key, wanted)
  session.ports.changed({ kind: 'view' })
}

/** Makes a column as wide as it is without anybody's doing. */
export function setUsualWidth(session: Session, column: number): void {
  if (column === LABELS) setLabels(session, undefined)
  else setWidth(session, column, usualWidth)
}

function setLabels(session: Session, width: number | undefined): void {
  if (width === session.labels.drawn) return
  session.labels.drawn = width
  session.ports.changed({ kind: 'view' })
}

/** Widens or narrows the columns of the selected entries by a step; the labels where one stands on one of them. */
export function stepWidth(session: Session, by: 1 | -1): void {
  const { left, right } = blockOf(session.selection)
  if (right < 0) {
    setWidth(session, LABELS, session.labels.shown + by * step)
    return session.ports.announce(say('width.now', session.labels.shown), 'polite')
  }
  for (let column = Math.max(left, 0); column <= right; column++) {
    setWidth(session, column, (session.widths.get(session.model.column(column)!.key) ?? usualWidth) + by * step)
  }
  session.ports.announce(say('width.now', session.widths.get(session.model.column(right)!.key) ?? usualWidth), 'polite')
}

/** Reads widths that an earlier life of the page left behind; odd ones are left out. */
export function readWidths(saved: unknown): Record<string, number> {
  if (typeof saved !== 'object' || saved === null) return {}
  return Object.fromEntries(Object.entries(saved).filter(([, width]) => typeof width === 'number' && width >= narrowest && width <= widest)) as Record<string, number>
}
