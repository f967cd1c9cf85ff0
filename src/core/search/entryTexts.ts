import { fieldNodes, fields } from '../notebook/fields'
import type { Entry } from '../notebook/notebook'
import { pairOf, scalarAt } from '../notebook/tree'
import { oneLine } from '../compare/oneLine'
import { say } from '../words/say'

/** What someone wrote in an entry, and what it is. */
export interface EntryText {
  label: string
  text: string
}

/** All words of an entry, what was felt and why first: what a search looks through. Each on one line. */
export function entryTexts(entry: Entry): EntryText[] {
  const first = ['reason', 'ride.felt', 'notes', 'verdict']
  const words = fields.filter(({ dimension, bare, key }) => dimension === undefined && bare !== true && key !== 'ride.log')
  const ordered = [...words].sort((a, b) => rank(first, a.key) - rank(first, b.key))
  return [
    ...ordered.flatMap((field) => fieldNodes(entry, field).map(({ text }) => ({ label: field.label, text }))),
    ...remarks(entry),
    { label: say('Entry'), text: [entry.id?.value, entry.date?.value, entry.asFound ? say('as found') : '', entry.baseline ? say('baseline') : ''].filter(Boolean).join(' ') },
  ].map(({ label, text }) => ({ label, text: oneLine(text) })).filter(({ text }) => text !== '')
}

const rank = (first: readonly string[], key: string) => (first.includes(key) ? first.indexOf(key) : first.length)

function remarks(entry: Entry): EntryText[] {
  const all = pairOf(entry.node, 'remarks')?.value
  if (all?.kind !== 'map') return []
  return all.pairs.flatMap(({ key }) => {
    const text = scalarAt(all, [key.text])?.text
    return text === undefined ? [] : [{ label: say`Remark on ${key.text}`, text }]
  })
}
