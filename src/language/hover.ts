import { slotKey, type Adjuster } from '../core/adjusters/adjuster'
import type { Card } from '../core/card/card'
import { cardFor } from '../core/card/cardFor'
import { cardMarkdown, escapeMarkdown } from '../core/card/cardMarkdown'
import { fileUnits } from '../core/notation/displayUnits'
import { settingRow, type Entry, type Notebook } from '../core/notebook/notebook'
import { descriptionAt, schemasAt } from '../core/notebook/schemaKeys'
import { descriptions } from '../core/rules'
import type { Range } from '../core/text'
import { say } from '../core/words/say'
import { choiceWords } from './choiceWords'
import { entryAtOffset } from './entryAtOffset'
import { locate, type Located } from './locate'
import { measuredHover } from './measuredHover'
import { occurrenceAt } from './names/occurrences'

/** What is shown about a place in the text. */
export interface Hover {
  range: Range
  markdown: string
  /** The card that the Markdown was made of, for an editor that can put its drawing into it. */
  card?: Card
  /** Only what the schema says, which a YAML extension may say as well. */
  fromSchema?: boolean
}

/**
 * What there is to say about the place under the pointer: the card of an adjuster, the working of what follows from a
 * measurement, the story of an entry, the meaning of a rule, and for everything else what the format says about a key
 * or a choice. Numbers that are worked out are in the units asked for.
 */
export function hoverAt(notebook: Notebook, offset: number, units = fileUnits): Hover | undefined {
  const place = locate(notebook.root, offset)
  if (!place) return undefined
  return settingHover(notebook, place, offset) ?? measuredHover(notebook, place, offset, units) ?? nameHover(notebook, offset) ?? ruleHover(place) ?? schemaHover(place)
}

/** On a setting, its name, its leg or its value: the card of where it stands in this entry. */
function settingHover(notebook: Notebook, { path, node }: Located, offset: number): Hover | undefined {
  const [section, , group, name, leg] = path
  const adjuster = section === 'entries' && group === 'settings' && name !== undefined ? notebook.adjusters.get(name) : undefined
  if (!adjuster) return undefined
  const entry = entryAtOffset(notebook, offset)
  const card = leg === undefined ? wholeCard(notebook, adjuster, entry) : cardFor(notebook, settingRow(`${name}/${leg}`), entry?.key)
  return card && cardHover(card, node.range)
}

/** A pair that is written as one value stands alike in both legs; one written leg by leg has no one place. */
function wholeCard(notebook: Notebook, adjuster: Adjuster, entry: Entry | undefined): Card | undefined {
  const first = slotKey(adjuster.id, adjuster.legs[0])
  const setting = entry?.settings.get(first)
  const isWhole = adjuster.legs.length === 0 || setting?.shared || adjuster.legs.length === 1
  if (!isWhole) return cardFor(notebook, settingRow(adjuster.id))
  const card = cardFor(notebook, settingRow(first), entry?.key)
  return card && setting?.shared ? { ...card, title: say`${adjuster.label}, both legs` } : card
}

function cardHover(card: Card, range: Range): Hover {
  return { range, markdown: cardMarkdown(card), card }
}

/** Where an adjuster is defined, or an adjuster or entry is named. */
function nameHover(notebook: Notebook, offset: number): Hover | undefined {
  const at = occurrenceAt(notebook, offset)
  if (!at) return undefined
  if (at.of === 'adjuster') {
    const card = cardFor(notebook, settingRow(at.name))
    return card && cardHover(card, at.range)
  }
  const entry = at.role === 'reference' ? notebook.entries.find(({ id }) => id?.value === at.name) : undefined
  return entry && { range: at.range, markdown: story(entry) }
}

function story({ key, date, reason, settings }: Entry): string {
  const set = [...settings].map(([slot, { node, leg, shared, adjuster }]) => (shared ? (leg === adjuster.legs[0] ? `${adjuster.id} ${node.text}` : undefined) : `${slot} ${node.text}`))
  const lines = [date?.value, reason?.value, set.filter((each) => each !== undefined).join(', ')]
  return [`**${escapeMarkdown(key)}**`, ...lines.flatMap((line) => (line ? [escapeMarkdown(line)] : []))].join('  \n')
}

function ruleHover({ path, node, on }: Located): Hover | undefined {
  const isRule = (path[0] === 'rules' && path.length === 2 && on === 'key') || (path.join('/') === 'accepted/*/finding' && on === 'value')
  const rule = isRule ? descriptions.find(({ code }) => code === node.text) : undefined
  return rule && { range: node.range, markdown: `**${rule.code}** (${say(rule.severity)})\n\n${say(rule.says)}\n\n${say(rule.why)}` }
}

function schemaHover({ path, node, on }: Located): Hover | undefined {
  const description = descriptionAt(path)
  const isChoice = on === 'value' && schemasAt(path).some((schema) => schema.enum?.map(String).includes(node.text))
  const words = isChoice ? choiceWords(path, node.text) : undefined
  const parts = [...(words ? [`**${escapeMarkdown(node.text)}**: ${words}`] : []), ...(description && (on === 'key' || isChoice) ? [say(description)] : [])]
  return parts.length === 0 ? undefined : { range: node.range, markdown: parts.join('\n\n'), fromSchema: true }
}
