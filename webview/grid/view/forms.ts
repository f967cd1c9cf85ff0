import type { Gesture } from '../../../src/core/grid/gesture'
import type { GridFinding } from '../../../src/core/grid/view'
import { say } from '../strings'
import { spotName } from '../model/describe'
import { nextEntryId, printDay } from '../model/nextEntry'
import type { Change, Session } from '../model/session'
import { HEADER } from '../model/spot'
import type { FormPlan } from './form'

/** What each of the grid's forms asks and sends. */

export function entryForm(session: Session, anchor: () => DOMRect): FormPlan {
  const { columns } = session.model.all
  return {
    title: say('form.entry.title'),
    fields: [
      { name: 'id', label: say('form.header.id'), value: nextEntryId(columns.map(({ id }) => id)) },
      { name: 'date', label: say('form.header.date'), value: printDay(new Date()) },
      { name: 'reason', label: say('form.header.reason'), value: '' },
    ],
    submit: say('form.entry.add'),
    anchor,
    flush: false,
    async send({ id = '', date = '', reason = '' }) {
      if (!id.trim() || !date.trim()) return say('form.entry.missing')
      const gesture: Gesture = { kind: 'addEntry', id: id.trim(), date: date.trim(), ...(reason.trim() && { reason: reason.trim() }) }
      return (await session.ask(gesture)).refused
    },
  }
}

export function headerForm(session: Session, anchor: () => DOMRect): FormPlan {
  const column = session.model.column(session.active.column)!
  let sent = { reason: column.reason, date: column.date, id: column.id }
  return {
    title: say('form.header.title', column.id),
    fields: [
      { name: 'id', label: say('form.header.id'), value: column.id },
      { name: 'date', label: say('form.header.date'), value: column.date },
      { name: 'reason', label: say('form.header.reason'), value: column.reason, prose: true },
    ],
    submit: say('form.save'),
    anchor,
    flush: true,
    async send(values) {
      // The name last: once it is changed, the entry no longer answers to its old key.
      const changed = (['reason', 'date', 'id'] as const).filter((field) => (values[field] ?? '').trim() !== sent[field])
      const answers = changed.map(async (field) => {
        const text = (values[field] ?? '').trim()
        const { refused } = await session.ask({ kind: 'setHeader', column: column.key, field, text })
        if (refused === undefined) sent = { ...sent, [field]: text }
        return refused
      })
      return (await Promise.all(answers)).find((refused) => refused !== undefined)
    },
  }
}

export function remarkForm(session: Session, anchor: () => DOMRect): FormPlan {
  const place = session.activePlace!
  let sent = session.model.cell(session.active)?.remark ?? ''
  return {
    title: say('form.remark.title', spotName(session.model, session.active)),
    about: say('form.remark.keys'),
    fields: [{ name: 'text', label: say('form.remark.text'), value: sent, prose: true }],
    submit: say('form.save'),
    anchor,
    flush: true,
    async send({ text = '' }) {
      if (text === sent) return undefined
      const { refused } = await session.ask({ kind: 'annotate', ...place, text })
      if (refused === undefined) sent = text
      return refused
    },
  }
}

export function acceptForm(session: Session, finding: GridFinding, anchor: () => DOMRect): FormPlan {
  return {
    title: say('form.accept.title'),
    about: `${finding.message} ${say('form.accept.about')}`,
    fields: [{ name: 'reason', label: say('form.accept.reason'), value: '' }],
    submit: say('form.accept.accept'),
    anchor,
    flush: false,
    async send({ reason = '' }) {
      if (!reason.trim()) return say('form.accept.missing')
      return (await session.ask({ kind: 'acceptFinding', finding: finding.id, reason: reason.trim() })).refused
    },
  }
}

/** Asks before something is done. */
export function confirmForm(session: Session, { title, about, submit, gesture }: Extract<Change, { kind: 'confirm' }>, anchor: () => DOMRect): FormPlan {
  return { title, about, submit, fields: [], anchor, flush: false, send: async () => (await session.ask(gesture)).refused }
}

/** The spot a form is shown beside. */
export const besideHeader = (session: Session) => ({ row: HEADER, column: session.active.column })
