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
  checkNotebook: ({ entries }) => entries.flatMap((entry) => check(entry, entries)),
}

function check(entry: Entry, entries: readonly Entry[]): Report[] {
  const { date } = entry
  if (!isDated(entry) || !date) return []
  const from = datedAncestor(entry)
  if (from && isBefore(date.value, from.date.value)) return [{ message: say`${date.value} is before ${from.date.value}, the date of ‘${from.key}’, which this comes from: correct one of them`, range: date.range, entry }]
  const above = datedAbove(entry, entries)
  return above && isBefore(date.value, above.date.value)
    ? [{ message: say`${date.value} is before ${above.date.value}, the date of ‘${above.key}’ above it: entries run oldest first`, range: date.range, entry }]
    : []
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

function datedAbove(entry: Entry, entries: readonly Entry[]): Dated | undefined {
  let index = entry.index - 1
  while (index >= 0 && !isDated(entries[index]!)) index--
  return entries[index] as Dated | undefined
}

/** Where one of the two has no time, only the days can be compared. */
function isBefore(a: string, b: string): boolean {
  const [one, other] = [comparable(a), comparable(b)]
  return one < other.slice(0, one.length)
}

function comparable(date: string): string {
  return date.replace('T', ' ').slice(0, 16)
}
