import type { FactChange } from '../factsOf'
import type { EntryReview, Review } from '../review'
import { changeReport, findingBlocks, nameOf } from './comparisonReport'
import { nothing, type Block } from './report'

/** A review for someone who reads: what became of the entries first, then each of them, the machine's own facts and all findings. */
export function reviewReport(review: Review): Block[] {
  const { before, after, entries, facts, findings } = review
  return [
    { kind: 'heading', level: 1, text: `${after.title}: ${summary(review)}` },
    { kind: 'line', label: 'From', text: nameOf(before) },
    { kind: 'line', label: 'To', text: nameOf(after) },
    ...(entries.length > 0 ? [{ kind: 'list' as const, label: 'Entries', items: entries.map(entryLine) }] : []),
    ...factBlocks('About the machine', facts),
    ...findingBlocks(findings),
    ...entries.filter(({ kind }) => kind !== 'removed').flatMap(entryBlocks),
  ]
}

/** @example '2 entries added, 1 changed; 1 new finding; 2 findings gone' */
function summary({ entries, facts, findings }: Review): string {
  const count = (kind: EntryReview['kind']) => entries.filter((entry) => entry.kind === kind).length
  const counts = (['added', 'changed', 'renamed', 'removed', 'affected'] as const).filter((kind) => count(kind) > 0)
    .map((kind, at) => `${count(kind)} ${at > 0 ? '' : count(kind) === 1 ? 'entry ' : 'entries '}${kind}`)
  const told = [
    ...(counts.length > 0 ? [counts.join(', ')] : []),
    ...(facts.length > 0 ? [`${facts.length} ${facts.length === 1 ? 'fact' : 'facts'} about the machine`] : []),
    ...(findings.new.length > 0 ? [`${findings.new.length} new ${findings.new.length === 1 ? 'finding' : 'findings'}`] : []),
    ...(findings.gone.length > 0 ? [`${findings.gone.length} ${findings.gone.length === 1 ? 'finding' : 'findings'} gone`] : []),
  ]
  return told.length > 0 ? told.join('; ') : 'nothing changed'
}

const kinds = {
  added: 'added', changed: 'changed', renamed: 'renamed', removed: 'removed', affected: 'not touched itself, but something stands otherwise in it',
}

function entryLine(entry: EntryReview): string {
  return [entry.key, entry.date].filter(Boolean).join(', ') + `: ${kindWords(entry)}`
}

function kindWords({ kind, from, was }: EntryReview): string {
  const more = kind === 'added' && from !== undefined ? `, comes from ${from}` : was === undefined ? '' : `, was ${was}`
  return `${kinds[kind]}${more}`
}

function entryBlocks(entry: EntryReview): Block[] {
  const { key, kind, comparison, facts } = entry
  const heading: Block = { kind: 'heading', level: 2, text: `${key}, ${kindWords(entry)}` }
  if (kind === 'renamed') return []
  // The findings were all told above, of the notebook as a whole.
  const change = comparison ? changeReport({ ...comparison, findings: { new: [], gone: [], notReadAgain: [], foundBefore: [] } }) : [{ kind: 'line' as const, text: 'The first entry: there is nothing to compare it with.' }]
  return [heading, ...factBlocks('Written otherwise', facts), ...change]
}

function factBlocks(label: string, facts: readonly FactChange[]): Block[] {
  return facts.length === 0 ? [] : [{ kind: 'table', head: [label, 'Was', 'Is'], rows: facts.map(({ path, before, after }) => [path, before ?? nothing, after ?? nothing]) }]
}
