import { slotKey, slotsOf, type Adjuster } from '../../core/adjusters/adjuster'
import { escapeMarkdown } from '../../core/card/cardMarkdown'
import { isTurned } from '../../core/adjusters/describeTurning'
import { countWords } from '../../core/grid/rows'
import { fields } from '../../core/notebook/fields'
import type { Entry } from '../../core/notebook/notebook'
import { lineEndOf } from '../../core/text'
import { say } from '../../core/words/say'
import { keyText, type Asked, type Completion } from './completion'

/** The adjusters that an entry does not set yet: first those whose position nobody knows, then as the notebook lists them. */
export function adjusterCompletions({ adjusters, cursor, entry }: Asked): Completion[] {
  const free = [...adjusters.values()].filter(({ id }) => !cursor.beside.has(id))
  const unknown = free.filter((adjuster) => standings(adjuster, entry).length === 0)
  return [...unknown, ...free.filter((adjuster) => !unknown.includes(adjuster))].map((adjuster) => {
    const stands = standings(adjuster, entry)
    const detail = `${countWords(adjuster)} · ${stands.length === 0 ? say('not recorded yet') : say`stands at ${stands.join(', ')}`}`
    return { label: adjuster.id, kind: 'adjuster', detail, ...aboutOf(adjuster), insert: keyText(adjuster.id, cursor), again: true }
  })
}

/** Where an adjuster stands in an entry, leg by leg where they differ. */
function standings(adjuster: Adjuster, entry: Entry | undefined): string[] {
  const stands = slotsOf(adjuster).flatMap(({ leg }) => {
    const text = entry?.state.get(slotKey(adjuster.id, leg))?.setting.node.text
    return text === undefined ? [] : [{ leg, text }]
  })
  const alike = stands.length === adjuster.legs.length && stands.every(({ text }) => text === stands[0]!.text)
  return alike && stands[0] ? [stands[0].text] : stands.map(({ leg, text }) => (leg ? `${leg} ${text}` : text))
}

function aboutOf({ label, place, tool, notes }: Adjuster): { about: string } {
  return { about: escapeMarkdown([label, place, tool, notes].filter(Boolean).join(' · ')) }
}

/** The adjusters in whose head this one may sit. */
export function outerCompletions({ adjusters, path }: Asked): Completion[] {
  const others = [...adjusters.values()].filter((adjuster) => adjuster.id !== path[1] && isTurned(adjuster))
  return others.map((adjuster) => ({ label: adjuster.id, kind: 'adjuster', detail: countWords(adjuster), ...aboutOf(adjuster), insert: adjuster.id }))
}

/** The legs of an adjuster that are not written yet. */
export function legCompletions({ adjusters, cursor, entry, path }: Asked): Completion[] {
  const adjuster = adjusters.get(path.at(-1)!)
  return (adjuster?.legs ?? []).filter((leg) => !cursor.beside.has(leg)).map((leg) => {
    const stands = entry?.state.get(slotKey(adjuster!.id, leg))?.setting.node.text
    return { label: leg, kind: 'leg', detail: say`the ${say(leg)} leg${stands === undefined ? '' : say` · stands at ${stands}`}`, insert: keyText(leg, cursor), again: true }
  })
}

/** What a remark can be about, as the keys of remarks. */
export function subjectKeys(asked: Asked): Completion[] {
  return subjects(asked).map((item) => ({ ...item, insert: keyText(item.label, asked.cursor) }))
}

/** What a remark or an acceptance can be about: an adjuster, one of its legs, or something measured. */
export function subjects({ adjusters, cursor }: Asked): Completion[] {
  const ofAdjusters = [...adjusters.values()].flatMap((adjuster) => [
    { label: adjuster.id, kind: 'adjuster' as const, detail: adjuster.label },
    ...adjuster.legs.map((leg) => ({ label: slotKey(adjuster.id, leg), kind: 'leg' as const, detail: say`${adjuster.label}, ${say(leg)} leg` })),
  ])
  const measured = fields.map(({ key, label, detail }) => ({ label: key, kind: 'key' as const, detail: detail ? `${label}, ${detail}` : label }))
  return [...ofAdjusters, ...measured].filter(({ label }) => !cursor.beside.has(label)).map((item) => ({ ...item, insert: item.label }))
}

/** An adjuster with what it cannot do without, to be filled in. */
export function newAdjuster({ cursor, notebook }: Asked): Completion[] {
  if (cursor.hasColon || cursor.flow) return []
  const next = `${lineEndOf(notebook.text)}${cursor.indent}  `
  const lines = ['on: $2', 'controls: $3', 'counts: $4']
  return [{ label: say('new adjuster'), kind: 'shape', detail: say('what it sits on, controls and counts in'), insert: `$1:${next}${lines.join(next)}`, snippet: true }]
}
