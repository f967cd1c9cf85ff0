import type { Leg } from '../adjusters/adjuster'
import { findField } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { computedRows } from '../grid/computed'
import type { Card } from './card'
import { settingCard } from './settingCard'

/** The card of a row, in an entry where one is named: settings have the full one, other rows what is known of them. */
export function cardFor(notebook: Notebook, row: string, entryKey?: string): Card | undefined {
  const entry = notebook.entries.find(({ key }) => key === entryKey)
  if (row.startsWith('settings/')) return cardOfSlot(notebook, row.slice('settings/'.length), entry)
  const field = findField(row)
  if (field?.about) return { title: field.detail ? `${field.label}, ${field.detail}` : field.label, sections: [{ heading: '', lines: [field.about] }] }
  const computed = computedRows.find(({ key }) => `computed/${key}` === row)
  return computed && { title: computed.detail ? `${computed.label}, ${computed.detail}` : computed.label, sections: [{ heading: '', lines: [computed.about] }] }
}

function cardOfSlot(notebook: Notebook, slot: string, entry: Entry | undefined): Card | undefined {
  const plain = notebook.adjusters.get(slot)
  if (plain) return settingCard(entry, plain, undefined)
  const match = /^(.*)\/(left|right)$/.exec(slot)
  const adjuster = match && notebook.adjusters.get(match[1]!)
  return adjuster ? settingCard(entry, adjuster, match![2] as Leg) : undefined
}
