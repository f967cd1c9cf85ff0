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
    ...(entries.length > 0 ? [{ kind: 'list' as const, label: 'Entries', items: runs(entries, bothAffected).map(entryLine) }] : []),
    ...factBlocks('About the machine', facts),
    ...findingBlocks(findings),
    ...runs(entries.filter(({ kind }) => kind !== 'removed' && kind !== 'renamed'), (one, other) => bothAffected(one, other) && sameChange(one, other)).flatMap((run, at, all) => entryBlocks(run, all[at - 1]?.[0])),
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

/** What follows one another and belongs together: a change that is carried on is told once, however many entries it reaches. */
function runs(entries: readonly EntryReview[], together: (one: EntryReview, other: EntryReview) => boolean): EntryReview[][] {
  const found: EntryReview[][] = []
  for (const entry of entries) {
    const last = found.at(-1)
    if (last && together(last[0]!, entry)) last.push(entry)
    else found.push([entry])
  }
  return found
}

const bothAffected = (one: EntryReview, other: EntryReview) => one.kind === 'affected' && other.kind === 'affected'
const sameChange = (one: EntryReview, other: EntryReview) => JSON.stringify(changeOf(one)) === JSON.stringify(changeOf(other))

function entryLine(run: readonly EntryReview[]): string {
  const [entry] = run as [EntryReview]
  return run.length > 1 ? `${runName(run)}: ${severalAffected}` : [entry.key, entry.date].filter(Boolean).join(', ') + `: ${kindWords(entry)}`
}

const severalAffected = 'not touched themselves, but something stands otherwise in them'

/** @example 'sm-3 to sm-5 (3 entries)' */
function runName(run: readonly EntryReview[]): string {
  return `${run[0]!.key} to ${run.at(-1)!.key} (${run.length} entries)`
}

function kindWords({ kind, from, was }: EntryReview): string {
  const more = kind === 'added' && from !== undefined ? `, comes from ${from}` : was === undefined ? '' : `, was ${was}`
  return `${kinds[kind]}${more}`
}

/** @param before what is told just above */
function entryBlocks(run: readonly EntryReview[], before: EntryReview | undefined): Block[] {
  const [entry] = run as [EntryReview]
  const text = run.length > 1 ? `${runName(run)}, ${severalAffected}` : `${entry.key}, ${kindWords(entry)}`
  const repeats = before !== undefined && entry.kind === 'affected' && before.comparison !== undefined && sameChange(before, entry)
  const change: Block[] = repeats ? [{ kind: 'line', text: `The same change as in ${before.key}.` }] : changeOf(entry)
  return [{ kind: 'heading', level: 2, text }, ...factBlocks('Written otherwise', entry.facts), ...change]
}

function changeOf({ comparison }: EntryReview): Block[] {
  // The findings were all told above, of the notebook as a whole.
  return comparison ? changeReport({ ...comparison, findings: { new: [], gone: [], notReadAgain: [], foundBefore: [] } }) : [{ kind: 'line', text: 'The first entry: there is nothing to compare it with.' }]
}

function factBlocks(label: string, facts: readonly FactChange[]): Block[] {
  return facts.length === 0 ? [] : [{ kind: 'table', head: [label, 'Was', 'Is'], rows: facts.map(({ path, before, after }) => [path, before ?? nothing, after ?? nothing]) }]
}
