import type { GridPlace } from '../../../src/core/grid/view'
import { say } from '../strings'
import type { Pending } from './pending'
import type { Session } from './session'

/** What was typed and has no cell in sight: offered above the grid, so that it is at hand whatever became of its entry. */

/** What an earlier life of the page left open or unanswered is offered again, unless it stands there by now. */
export function restoreTyped(session: Session): void {
  const { model, saved } = session
  const textAt = (place: GridPlace) => {
    const { rows, columns, cells } = model.all
    const [y, x] = [rows.findIndex(({ key }) => key === place.row), columns.findIndex(({ key }) => key === place.column)]
    return cells.said(y, x)?.text
  }
  session.pending.keep(saved.unwritten.filter((typed) => textAt(typed) !== typed.text), say('refused.unsent'))
  const { open } = saved
  if (!open) return
  const before = textAt(open)
  if (before !== undefined && model.spotOf(open)) session.editing = { ...open, caret: 'end', before, touched: true }
  else session.pending.keep([open], say('refused.unsent'))
}

/** Opens the form again that was being filled in when the page ended. */
export function restoreForm(session: Session): void {
  const { form: open, model } = session
  if (!open) return
  const spot = model.spotOf(open)
  if (open.form === 'accept') {
    const finding = model.view.findings.list.find(({ message }) => message === open.finding)
    if (finding && model.writable) return session.ports.changed({ kind: 'accept', finding, values: open.values })
  } else if (model.writable && (open.form === 'entry' || spot)) {
    if (open.form !== 'entry' && spot) session.select(spot)
    return session.ports.changed({ kind: 'form', form: open.form, values: open.values })
  }
  session.note(say('refused.form', Object.values(open.values).filter(Boolean).join(' · ')))
  session.formAsNotice = true
}

/** The cell that is being typed in went with its entry or its row: what was typed is kept. */
export function keepHomeless(session: Session): void {
  const { editing, model } = session
  if (!editing || model.spotOf(editing)) return
  session.editing = undefined
  if (editing.touched) session.pending.keep([editing], say('refused.unsent'))
  session.ports.changed({ kind: 'editing' })
}

/** The texts that were not written and whose cell is not in sight: because the notebook has none such, or because it is hidden. */
export function homeless(session: Session): { gone: Pending[]; hidden: Pending[] } {
  const { model, pending } = session
  const away = pending.refused.filter((each) => model.spotOf(each) === undefined)
  return { gone: away.filter((each) => !model.isHidden(each)), hidden: away.filter((each) => model.isHidden(each)) }
}

/** Such a text with the place it was for. */
export const nameHomeless = ({ row, column, text }: Pending): string => `${column}, ${row.slice(row.lastIndexOf('/') + 1)}: ${text}`
