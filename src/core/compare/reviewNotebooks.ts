import type { Adjuster } from '../adjusters/adjuster'
import type { Entry, Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import { say } from '../words/say'
import { compareAllFindings, findingsOf } from './compareFindings'
import { compareStates } from './compareStates'
import type { CompareOptions, CompareSide, StateRef } from './comparison'
import { factChanges, factsOf, type FactChange } from './factsOf'
import type { EntryReview, Review } from './review'
import { sideOf } from './sides'

/** Reviews the later of two versions of one notebook against the earlier. Neither may be broken: a broken one is told as its side's trouble, and nothing else. */
export function reviewNotebooks(earlier: Omit<StateRef, 'entry'>, later: Omit<StateRef, 'entry'>, options: Pick<CompareOptions, 'units'> = {}): Review {
  const sides = { before: wholeSide(earlier), after: wholeSide(later) }
  if (earlier.notebook.broken || later.notebook.broken) return { ...sides, entries: [], facts: [], findings: { new: [], gone: [], notReadAgain: [], foundBefore: [] } }
  const [before, after] = [earlier, later].map((ref) => ({ ...ref, findings: findingsOf(ref) })) as [StateRef, StateRef]
  const pairs = pairEntries(before.notebook, after.notebook)
  const known = new Set(pairs.values())
  return {
    ...sides,
    entries: [
      ...after.notebook.entries.flatMap((entry) => entryReview(entry, pairs.get(entry), { before, after, options })),
      ...before.notebook.entries.filter((entry) => !known.has(entry)).map((entry): EntryReview => ({ kind: 'removed', ...headOf(entry), facts: [] })),
    ],
    facts: factsBeside(before.notebook, after.notebook),
    findings: compareAllFindings(before, after),
  }
}

/** A notebook as a whole has no trouble for having no entries yet. */
function wholeSide(ref: Omit<StateRef, 'entry'>): CompareSide {
  const { trouble, ...side } = sideOf(ref)
  return ref.notebook.broken && trouble ? { ...side, trouble } : side
}

interface Versions {
  before: StateRef
  after: StateRef
  options: Pick<CompareOptions, 'units'>
}

function headOf(entry: Entry): Pick<EntryReview, 'key' | 'date' | 'reason' | 'from'> {
  return { key: entry.key, date: entry.date?.value ?? '', reason: entry.reason?.value.trim() ?? '', ...(entry.parent ? { from: entry.parent.key } : {}) }
}

function entryReview(entry: Entry, was: Entry | undefined, { before, after, options }: Versions): EntryReview[] {
  const how = { ...options, oneMachine: true }
  const now = { ...after, entry }
  if (!was) return [{ kind: 'added', ...headOf(entry), ...(entry.parent ? { comparison: compareStates({ ...after, entry: entry.parent }, now, how) } : {}), facts: [] }]
  const facts = factChanges(factsOf(was.node), factsOf(entry.node))
  const standsAlike = facts.length === 0 && sameState(was, entry)
  if (standsAlike) return []
  const comparison = compareStates({ ...before, entry: was }, now, how)
  if (facts.length === 0 && comparison.changes === 0) return []
  const renamed = facts.length === 1 && facts[0]!.path === 'id' ? { was: was.key } : {}
  return [{ kind: facts.length === 0 ? 'affected' : 'was' in renamed ? 'renamed' : 'changed', ...headOf(entry), ...renamed, comparison, facts }]
}

/** A quick look, so that a season of entries that nobody touched is not compared one by one. */
function sameState(a: Entry, b: Entry): boolean {
  if (a.state.size !== b.state.size) return false
  return [...a.state].every(([slot, { setting }]) => {
    const other = b.state.get(slot)?.setting
    return other !== undefined && other.node.text === setting.node.text && sameAdjuster(setting.adjuster, other.adjuster)
  })
}

const sameAdjuster = (a: Adjuster, b: Adjuster): boolean =>
  a.counts === b.counts && a.end === b.end && a.range === b.range && a.higherIs === b.higherIs && a.mmPerTurn === b.mmPerTurn && a.clicksPerTurn === b.clicksPerTurn

/** Which earlier entry each later one is: by its own id, else by saying the same, else by being the same but for a new id. */
function pairEntries(before: Notebook, after: Notebook): Map<Entry, Entry> {
  const pairs = new Map<Entry, Entry>()
  const waiting = new Set(before.entries)
  const match = (keyOf: (entry: Entry) => string | undefined) => {
    const earlier = new Map<string, Entry[]>()
    for (const entry of waiting) {
      const key = keyOf(entry)
      if (key !== undefined) earlier.set(key, [...(earlier.get(key) ?? []), entry])
    }
    for (const entry of after.entries) {
      const key = pairs.has(entry) ? undefined : keyOf(entry)
      const found = key === undefined ? undefined : earlier.get(key)?.shift()
      if (!found) continue
      pairs.set(entry, found)
      waiting.delete(found)
    }
  }
  const told = (entry: Entry, but?: string) => JSON.stringify([...factsOf(entry.node)].filter(([path]) => path !== but))
  match(({ id, key }) => (id?.value === key ? key : undefined))
  match((entry) => told(entry))
  match((entry) => told(entry, 'id'))
  return pairs
}

/** An acceptance is told as one, so that one put before others does not change all behind it. */
function factsBeside(before: Notebook, after: Notebook): FactChange[] {
  const beside = ({ root }: Notebook) => new Map((root?.pairs ?? []).filter(({ key }) => key.text !== 'entries' && key.text !== 'accepted').flatMap(({ key, value }) => [...factsOf(value, key.text)]))
  const accepted = ({ accepted: all }: Notebook) => all.map(({ node, finding, entry, about }) => ({
    path: ['accepted', finding, entry, about].filter(Boolean).join(' '), text: scalarAt(node, ['reason'])?.text.trim() ?? say('without a reason'),
  }))
  const [then, now] = [accepted(before), accepted(after)]
  const isIn = (list: typeof then, one: typeof then[number]) => list.some(({ path, text }) => path === one.path && text === one.text)
  return [
    ...factChanges(beside(before), beside(after)),
    ...now.filter((one) => !isIn(then, one)).map(({ path, text }) => ({ path, after: text })),
    ...then.filter((one) => !isIn(now, one)).map(({ path, text }) => ({ path, before: text })),
  ]
}
