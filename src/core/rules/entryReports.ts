import type { Entry, Notebook } from '../notebook/notebook'
import type { Range, TextChange } from '../text'
import type { EntryRule, Report } from './rule'

/** What a rule said about an entry, and where that stood then. */
interface Known {
  place: Range
  reports: Report[]
}

const known = new WeakMap<object, Map<EntryRule, Known>>()

/**
 * What a rule for entries reports of one. What it reported before, of an entry that says the same, is only moved to
 * where the entry stands now; a report that reaches out of its entry is made anew each time.
 */
export function reportsOf(rule: EntryRule, entry: Entry, notebook: Notebook): Report[] {
  const said = known.get(entry.content) ?? new Map<EntryRule, Known>()
  const before = said.get(rule)
  const place = entry.node.range
  const reports = before ? moved(before.reports, place.start - before.place.start) : rule.checkEntry(entry, notebook)
  if (reports.every((report) => staysWithin(report, place))) known.set(entry.content, said.set(rule, { place, reports }))
  return reports
}

function staysWithin({ range, entry, fixes = [] }: Report, place: Range): boolean {
  const isInside = ({ start, end }: Range) => start >= place.start && end <= place.end
  return entry === undefined && isInside(range) && fixes.every(({ changes }) => changes.every(isInside))
}

function moved(reports: Report[], by: number): Report[] {
  if (by === 0) return reports
  const move = <Placed extends Range | TextChange>(placed: Placed): Placed => ({ ...placed, start: placed.start + by, end: placed.end + by })
  return reports.map((report) => ({
    ...report, range: move(report.range),
    ...(report.fixes ? { fixes: report.fixes.map((fix) => ({ ...fix, changes: fix.changes.map(move) })) } : {}),
  }))
}
