import type { Finding } from '../../core/finding'
import type { Notebook } from '../../core/notebook/notebook'
import { longestText } from '../../core/notebook/parseTree'
import { findCursor } from '../cursor/cursor'
import { entryAtOffset } from '../entryAtOffset'
import { choiceCompletions, legsCompletions } from './choices'
import type { Asked, Completion, Completions } from './completion'
import { adjusterCompletions, legCompletions, newAdjuster, outerCompletions, subjectKeys, subjects } from './names'
import { positionCompletions } from './positions'
import { entryCompletions, itemCompletions, parentCompletions, ruleCodes, ruleKeys, today } from './references'
import { schemaKeyCompletions } from './schemaKeys'
import { unitCompletions } from './units'

type Source = (asked: Asked) => Completion[]

/** Where keys come from, by the path of their map; from the schema where no row says otherwise. */
const keySources: readonly [path: RegExp, ...sources: Source[]][] = [
  [/^entries\/\*\/settings$/, adjusterCompletions],
  [/^entries\/\*\/settings\/[^/]+$/, legCompletions],
  [/^entries\/\*\/remarks$/, subjectKeys],
  [/^rules$/, ruleKeys],
  [/^adjusters$/, newAdjuster],
  [/^(entries|accepted)\/\*$/, itemCompletions, schemaKeyCompletions],
]

/** Where values come from, by their path; besides, every choice and unit that the schema knows of. */
const valueSources: readonly [path: RegExp, ...sources: Source[]][] = [
  [/^entries\/\*\/settings\/[^/]+(\/[^/]+)?$/, positionCompletions],
  [/^entries\/\*\/from$/, parentCompletions],
  [/^entries\/\*\/date$/, today],
  [/^accepted\/\*\/finding$/, ruleCodes],
  [/^accepted\/\*\/entry$/, entryCompletions],
  [/^accepted\/\*\/about$/, subjects],
  [/^adjusters\/[^/]+\/legs$/, legsCompletions],
  [/^adjusters\/[^/]+\/inside$/, outerCompletions],
]

/**
 * What can be typed at an offset, best first; `undefined` where nothing can. Works in a text that is half typed:
 * `lastGood` lends the adjusters where a broken text hides its own.
 */
export function complete(notebook: Notebook, offset: number, findings: readonly Finding[] = [], lastGood?: Notebook): Completions | undefined {
  // What is too long to be a notebook is not looked through either.
  const cursor = notebook.text.length > longestText ? undefined : findCursor(notebook.text, offset)
  if (!cursor) return undefined
  const path = cursor.path.map((step) => (typeof step === 'number' ? '*' : step))
  const entry = path[0] === 'entries' && path.length > 1 ? entryAtOffset(notebook, offset) : undefined
  const adjusters = notebook.adjusters.size > 0 ? notebook.adjusters : (lastGood ?? notebook).adjusters
  const asked: Asked = { notebook, cursor, path, adjusters, findings, ...(entry ? { entry } : {}) }
  const items = sourcesFor(asked).flatMap((source) => source(asked))
  return { range: cursor.range, items: cursor.glued ? items.map((item) => ({ ...item, insert: ` ${item.insert}` })) : items }
}

function sourcesFor({ cursor, path }: Asked): Source[] {
  const written = path.join('/')
  const at = (table: typeof keySources) => table.find(([pattern]) => pattern.test(written))?.slice(1) as Source[] | undefined
  switch (cursor.expects) {
    case 'item': return [itemCompletions]
    case 'key': return at(keySources) ?? [schemaKeyCompletions]
    case 'value': return valuesAt(at(valueSources))
    // A scalar on a line of its own is rare: only lists of words are written so.
    case 'either': return [...(at(keySources) ?? [schemaKeyCompletions]), ...(path.at(-1) === '*' ? [choiceCompletions] : [])]
  }
}

function valuesAt(own: Source[] | undefined): Source[] {
  return own?.includes(positionCompletions) ? own : [...(own ?? []), choiceCompletions, unitCompletions]
}
