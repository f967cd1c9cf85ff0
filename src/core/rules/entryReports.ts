import type { Finding } from '../finding'
import { isWatching, keepInstead, keepNot, recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Range, TextChange } from '../text'
import type { EntryRule, Report } from './rule'

/** What was reported about an entry, and where that stood then. */
interface Placed<Reported> {
  place: Range
  reported: readonly Reported[]
  /** It was seen to hold for the next version too. */
  lasts?: true
}

/**
 * What a rule for entries reports of one. What it reported before, of an entry that says the same, is only moved to
 * where the entry stands now; a report that reaches out of its entry is made anew each time.
 */
export function reportsOf(rule: EntryRule, entry: Entry, notebook: Notebook): readonly Report[] {
  if (!isWatching()) return rule.checkEntry(entry, notebook)
  return placedOf(entry, rule, undefined, () => rule.checkEntry(entry, notebook), (report) => report.entry === undefined)
}

/** The same for all that is found in an entry; `guard` is another where it would be told otherwise. */
export function findingsOf(entry: Entry, guard: unknown, find: () => readonly Finding[]): readonly Finding[] {
  return placedOf(entry, 'findings', guard, find, ({ place }) => place?.entry === entry.key)
}

function placedOf<Reported extends Movable>(entry: Entry, key: unknown, guard: unknown, work: () => readonly Reported[], mayStay: (reported: Reported) => boolean): readonly Reported[] {
  const place = entry.node.range
  const known = recall(entry, key, guard, (): Placed<Reported> => ({ place, reported: work() }))
  // Most rules find nothing in most entries.
  if (known.reported.length === 0) return known.reported
  if (known.lasts && known.place.start === place.start) return known.reported
  const reported = moved(known.reported, place.start - known.place.start)
  if (reported.every((each) => mayStay(each) && staysWithin(each, place))) keepInstead(entry, key, { place, reported, lasts: true })
  else keepNot(entry, key)
  return reported
}

type Movable = Pick<Report, 'range' | 'fixes'>

function staysWithin({ range, fixes = [] }: Movable, place: Range): boolean {
  const isInside = ({ start, end }: Range) => start >= place.start && end <= place.end
  return isInside(range) && fixes.every(({ changes }) => changes.every(isInside))
}

function moved<Reported extends Movable>(reports: readonly Reported[], by: number): readonly Reported[] {
  if (by === 0) return reports
  const move = <Placed extends Range | TextChange>(placed: Placed): Placed => ({ ...placed, start: placed.start + by, end: placed.end + by })
  return reports.map((report) => ({
    ...report, range: move(report.range),
    ...(report.fixes ? { fixes: report.fixes.map((fix) => ({ ...fix, changes: fix.changes.map(move) })) } : {}),
  }))
}
