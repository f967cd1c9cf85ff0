import { say } from '../strings'
import { hide } from './hide'
import { blockOf } from './selection'
import type { Session } from './session'
import type { PageView } from './unpackView'

/** Keeps the selected entries in sight beside the labels; where all of them are, lets go of them. */
export function togglePin(session: Session): void {
  const { model, selection } = session
  const { left, right } = blockOf(selection)
  const chosen = model.view.columns.slice(Math.max(left, 0), right + 1)
  if (chosen.length === 0) return session.ports.announce(say('refuse.noEntry'), 'shown')
  const { keys, on } = toggled(model.hiding.pinned, chosen.map(({ key }) => key))
  hide(session, { pinned: keys })
  session.ports.announce(told(on, chosen.map(({ id, key }) => id || key), 'pin'), 'polite')
}

/** Keeps the selected rows in sight below the header; where all of them are, lets go of them. */
export function togglePinRow(session: Session): void {
  const { model, selection } = session
  const { top, bottom } = blockOf(selection)
  const chosen = model.view.rows.slice(Math.max(top, 0), bottom + 1).filter(({ kind }) => kind !== 'group')
  if (chosen.length === 0) return session.ports.announce(say('refuse.noRow'), 'shown')
  const { keys, on } = toggled(model.hiding.pinnedRows, chosen.map(({ key }) => key))
  hide(session, { pinnedRows: keys })
  session.ports.announce(told(on, chosen.map(({ label, detail }) => [label, detail].filter(Boolean).join(' ')), 'pinRow'), 'polite')
}

function toggled(before: readonly string[], chosen: readonly string[]): { keys: string[]; on: boolean } {
  const on = !chosen.every((key) => before.includes(key))
  return { on, keys: on ? [...new Set([...before, ...chosen])] : before.filter((key) => !chosen.includes(key)) }
}

/** One is named, of several it is said how many they are. */
function told(on: boolean, names: readonly string[], what: 'pin' | 'pinRow'): string {
  if (names.length === 1) return say(`${what}.${on ? 'on' : 'off'}`, names[0]!)
  return say(`${what}.many.${on ? 'on' : 'off'}`, names.length)
}

/** An entry under another name stays pinned and as wide as it was drawn. To be called before the view with the new name is shown. */
export function followRename({ model, widths }: Session, view: Pick<PageView, 'columns'>): void {
  const before = model.all.columns
  const renamed = before.length === view.columns.length ? view.columns.flatMap(({ key }, at) => (before[at]!.key === key ? [] : [[before[at]!.key, key] as const])) : []
  const [old, now] = renamed[0] ?? []
  if (renamed.length !== 1 || old === undefined || now === undefined) return
  model.hiding = { ...model.hiding, pinned: model.hiding.pinned.map((key) => (key === old ? now : key)) }
  const width = widths.get(old)
  widths.delete(old)
  if (width !== undefined) widths.set(now, width)
}
