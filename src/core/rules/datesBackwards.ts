import type { EntryRule } from './rule'
import { isDay } from './unreadableDate'

export const datesBackwards: EntryRule = {
  code: 'dates-backwards',
  severity: 'warning',
  says: 'An entry is dated before the entry it comes from.',
  why: 'Nothing can come from what was not yet. One of the two dates is a slip.',
  checkEntry: ({ date, parent }) => {
    if (!date || !parent?.date || !isDay(date.value) || !isDay(parent.date.value)) return []
    const [now, then] = [comparable(date.value), comparable(parent.date.value)]
    // Where one of the two has no time, only the days can be compared.
    const length = Math.min(now.length, then.length)
    if (now.slice(0, length) >= then.slice(0, length)) return []
    return [{ message: `${date.value} is before ${parent.date.value}, the date of ${parent.key}, which this comes from`, range: date.range }]
  },
}

function comparable(date: string): string {
  return date.replace('T', ' ').slice(0, 16)
}
