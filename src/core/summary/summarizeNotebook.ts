import { isOfState } from '../compare/compareFindings'
import type { Finding, Severity } from '../finding'
import { wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { scalarAt } from '../notebook/tree'
import { lineAndColumn } from '../text'
import { daysSince } from './daysSince'

/** What a list of notebooks says of one: whose it is, what was done last and when, and what is open. Plain data. */
export interface NotebookSummary {
  /** The machine's name; empty where it has none. */
  title: string
  /** What keeps it from being read: the first error of syntax. */
  trouble?: { message: string; line: number }
  /** In the order of the file, oldest first. */
  entries: EntrySummary[]
  /** How many findings are open: about the notebook as a whole, or about the machine as it stands after the last entry. */
  open: Tally
  /** Days from the last entry to today; absent where it has no date that can be read. */
  days?: number
}

export interface EntrySummary {
  key: string
  id: string
  date: string
  reason: string
  verdict: string
  /** The entry it comes from, where that is not the one before. */
  from?: string
  asFound: boolean
  baseline: boolean
  /** The findings about this entry. */
  findings: Tally
}

export type Tally = Record<Severity, number>

/** @param today YYYY-MM-DD, where the person is */
export function summarizeNotebook(notebook: Notebook, findings: readonly Finding[], today: string): NotebookSummary {
  const { broken, entries } = notebook
  const last = entries.at(-1)
  const byEntry = new Map<string | undefined, Finding[]>()
  for (const finding of findings) byEntry.set(finding.place?.entry, [...(byEntry.get(finding.place?.entry) ?? []), finding])
  const days = last?.date && daysSince(last.date.value, today)
  return {
    title: wordsAt(notebook, ['machine', 'name'])?.trim() ?? '',
    ...(broken ? { trouble: { message: broken.message, line: lineAndColumn(notebook.text, broken.range.start).line + 1 } } : {}),
    entries: entries.map((entry) => summaryOf(entry, entries, byEntry.get(entry.key) ?? [])),
    open: tally(findings.filter((finding) => finding.place?.entry === undefined || (last !== undefined && isOfState(finding, last, { notebook })))),
    ...(days === undefined ? {} : { days }),
  }
}

function summaryOf(entry: Entry, entries: readonly Entry[], about: readonly Finding[]): EntrySummary {
  const { parent, index } = entry
  return {
    key: entry.key, id: entry.id?.value ?? '', date: entry.date?.value ?? '', reason: entry.reason?.value.trim() ?? '',
    verdict: scalarAt(entry.node, ['verdict'])?.text ?? '',
    ...(parent && parent !== entries[index - 1] ? { from: parent.key } : {}),
    asFound: entry.asFound, baseline: entry.baseline,
    findings: tally(about),
  }
}

function tally(findings: readonly Finding[]): Tally {
  const counts = { error: 0, warning: 0, info: 0 }
  for (const { severity } of findings) counts[severity]++
  return counts
}

/** The most serious of those that were counted; `undefined` for none. */
export function worstOf(counts: Tally): Severity | undefined {
  return (['error', 'warning', 'info'] as const).find((severity) => counts[severity] > 0)
}

/** @example tallyWords({ error: 1, warning: 2, info: 0 }) // '1 error, 2 warnings' */
export function tallyWords(counts: Tally): string {
  const names = { error: 'error', warning: 'warning', info: 'note' }
  return (['error', 'warning', 'info'] as const).flatMap((severity) => (counts[severity] === 0 ? [] : [`${counts[severity]} ${names[severity]}${counts[severity] === 1 ? '' : 's'}`])).join(', ')
}
