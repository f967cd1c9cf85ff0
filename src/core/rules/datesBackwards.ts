import type { Entry, Written } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'
import { say } from '../words/say'
import type { NotebookRule, Report } from './rule'
import { isDay } from './unreadableDate'

export const datesBackwards: NotebookRule = {
  code: 'dates-backwards',
  severity: 'warning',
  says: 'An entry is dated before the entry it comes from, or before one that stands above it.',
  why: 'Nothing can come from what was not yet, and the history runs oldest first. One of the two dates is a slip.',
  checkNotebook: ({ entries }) => {
    const reports: Report[] = []
    let above: Dated | undefined
    for (const entry of entries) {
      if (!isDated(entry)) continue
      const report = check(entry, above)
      if (report) reports.push(report)
      above = entry
    }
    return reports
  },
}

/** `above` is the nearest entry with a date that stands above this one. */
function check(entry: Dated, above: Dated | undefined): Report | undefined {
  const { date } = entry
  const from = datedAncestor(entry)
  if (from && isBefore(date, from.date)) return { message: say`${date.value} is before ${from.date.value}, the date of ‘${from.key}’, which this comes from: correct one of them`, range: date.range, entry }
  return above && above !== from && isBefore(date, above.date)
    ? { message: say`${date.value} is before ${above.date.value}, the date of ‘${above.key}’ above it: entries run oldest first`, range: date.range, entry }
    : undefined
}

const isDayOnce = oncePer(({ value }: Written) => isDay(value))

type Dated = Entry & { date: NonNullable<Entry['date']> }

function isDated(entry: Entry): entry is Dated {
  return entry.date !== undefined && isDayOnce(entry.date)
}

/** The nearest entry with a date on the way back; what has none says nothing about when it was. */
function datedAncestor(entry: Entry): Dated | undefined {
  let at = entry.parent
  while (at && !isDated(at)) at = at.parent
  return at
}

/** Where one of the two has no time, only the days can be compared. */
function isBefore(a: Written, b: Written): boolean {
  const [one, other] = [comparable(a), comparable(b)]
  return one < other.slice(0, one.length)
}

const comparable = oncePer(({ value }: Written) => value.replace('T', ' ').slice(0, 16))
