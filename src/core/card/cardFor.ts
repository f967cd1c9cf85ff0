import type { Adjuster, Leg } from '../adjusters/adjuster'
import { isTurned } from '../adjusters/describeTurning'
import { creepOf, creepWords } from '../derived/creep'
import { findField } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { fileUnits, type DisplayUnits } from '../notation/displayUnits'
import { chartOfRow } from '../charts/buildCharts'
import { found, isMissing } from '../compute/working/result'
import { computedRows } from '../grid/computed'
import type { Computed } from '../grid/computedRow'
import { say } from '../words/say'
import type { Card, CardSection } from './card'
import { settingCard } from './settingCard'
import { workingSections } from './workingSections'

/** The card of a row, in an entry where one is named: settings have the full one, other rows what is known of them. */
export function cardFor(notebook: Notebook, row: string, entryKey?: string, units = fileUnits): Card | undefined {
  const entry = notebook.entries.find(({ key }) => key === entryKey)
  if (row.startsWith('settings/')) return cardOfSlot(notebook, row.slice('settings/'.length), entry)
  const field = findField(row)
  if (field?.about) return { title: titleOf(field), sections: [{ heading: '', lines: [say(field.about)] }] }
  const computed = computedRows.find(({ key }) => `computed/${key}` === row)
  return computed && computedCard(computed, notebook, entry, units)
}

const titleOf = ({ label, detail }: { label: string; detail?: string }): string => (detail ? `${say(label)}, ${say(detail)}` : say(label))

/** What a row that is worked out is, and in an entry its whole working. */
function computedCard(computed: Computed, notebook: Notebook, entry: Entry | undefined, units: DisplayUnits): Card {
  const title = titleOf(computed)
  const about = { heading: '', lines: [say(computed.about)] }
  const chart = chartOfRow(`computed/${computed.key}`)
  return { title, ...(chart ? { chart } : {}), sections: entry ? [...answer(computed, notebook, entry, units), about, ...working(computed, notebook, entry, units)] : [about] }
}

/** What the row says in this entry, where it says it in words. */
function answer(computed: Computed, notebook: Notebook, entry: Entry, units: DisplayUnits): CardSection[] {
  if ('compute' in computed) {
    const result = found(computed.compute(notebook, entry))
    const note = result && computed.note?.(notebook, entry, result, units)
    return note ? [{ heading: say('Here'), lines: [note] }] : []
  }
  const said = computed.say(notebook, entry, units)
  return isMissing(said) ? workingSections(said) : [{ heading: say('Here'), lines: [said.text, ...(said.about ? [said.about] : [])] }]
}

function working(computed: Computed, notebook: Notebook, entry: Entry, units: DisplayUnits): CardSection[] {
  const own = 'compute' in computed ? workingSections(computed.compute(notebook, entry), { units }) : []
  const steps = computed.steps?.(notebook, entry) ?? []
  return [...own, ...steps.filter(({ outcome }) => !isMissing(outcome)).flatMap(({ name, outcome }) => workingSections(outcome, { heading: name, units }))]
}

function cardOfSlot(notebook: Notebook, slot: string, entry: Entry | undefined): Card | undefined {
  const plain = notebook.adjusters.get(slot)
  if (plain) return withRecord(notebook, settingCard(entry, plain, undefined), plain, undefined)
  const match = /^(.*)\/(left|right)$/.exec(slot)
  const adjuster = match && notebook.adjusters.get(match[1]!)
  const leg = match?.[2] as Leg
  return adjuster ? withRecord(notebook, settingCard(entry, adjuster, leg), adjuster, leg) : undefined
}

/** Whether the adjuster stays where it is put, over the whole notebook: a pattern shows that single finds do not. */
function withRecord(notebook: Notebook, card: Card, adjuster: Adjuster, leg: Leg | undefined): Card {
  const creep = isTurned(adjuster) ? creepOf(notebook, adjuster, leg) : undefined
  if (!creep) return card
  const before = card.sections.findIndex(({ heading }) => heading === say('How to count it'))
  const record = { heading: say('Over time'), lines: [creepWords(creep)] }
  return { ...card, sections: [...card.sections.slice(0, before), record, ...card.sections.slice(before)] }
}
