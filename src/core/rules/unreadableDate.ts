import type { EntryRule } from './rule'

const shape = /^(\d{4})-(\d\d)-(\d\d)(?:[T ](\d\d):(\d\d)(?::\d\d)?(?:Z|[+-]\d\d:\d\d)?)?$/

export const unreadableDate: EntryRule = {
  code: 'unreadable-date',
  severity: 'warning',
  says: 'A date is not a day as YYYY-MM-DD.',
  why: 'Written so, a day means the same to everyone and sorts by itself.',
  checkEntry: ({ date }) => (!date || isDay(date.value) ? [] : [{ message: `‘${date.value}’ is no day as YYYY-MM-DD`, range: date.range }]),
}

/** Whether a text is a day of the calendar, with or without a time. */
export function isDay(text: string): boolean {
  const match = shape.exec(text)
  if (!match) return false
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1]
  return days !== undefined && day >= 1 && day <= days && Number(match[4] ?? 0) < 24 && Number(match[5] ?? 0) < 60
}
