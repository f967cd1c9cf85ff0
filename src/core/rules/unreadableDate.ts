import { say } from '../words/say'
import type { EntryRule } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

const shape = /^(\d{4})-(\d\d)-(\d\d)(?:[T ](\d\d):(\d\d)(?::\d\d)?(?:Z|[+-]\d\d:\d\d)?)?$/

export const unreadableDate: EntryRule = {
  code: 'unreadable-date',
  severity: 'warning',
  says: 'A date is not a day as YYYY-MM-DD.',
  why: 'Written so, a day means the same to everyone and sorts by itself.',
  checkEntry: ({ date }, { text }) => {
    if (!date || isDay(date.value)) return []
    const meant = likelyDay(date.value)
    const fixes = meant === undefined ? [] : writeInstead(text, date.node, meant)
    return [{ message: say`‘${date.value}’ is no day of the calendar as YYYY-MM-DD, such as 2026-04-18`, range: date.range, fixes }]
  },
}

/** Whether a text is a day of the calendar, with or without a time. */
export function isDay(text: string): boolean {
  const match = shape.exec(text)
  if (!match) return false
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0
  return day >= 1 && day <= days && Number(match[4] ?? 0) < 24 && Number(match[5] ?? 0) < 60
}

const yearFirst = /^(\d{4})(?:[-./ ](\d{1,2})[-./ ](\d{1,2})|(\d\d)(\d\d))((?:[T ]+\d\d?:\d\d)?)$/
const yearLast = /^(\d{1,2})[-./ ](\d{1,2})[-./ ](\d{4})((?:[T ]+\d\d?:\d\d)?)$/

/**
 * The day that another way of writing can only mean: never a guess between day and month.
 *
 * @example likelyDay('18.4.2026') // '2026-04-18', for there is no month 18
 * @example likelyDay('4.5.2026') // undefined
 */
export function likelyDay(text: string): string | undefined {
  const first = yearFirst.exec(text.trim())
  if (first) return onlyDay([join(first[1]!, (first[2] ?? first[4])!, (first[3] ?? first[5])!, first[6]!)])
  const last = yearLast.exec(text.trim())
  return last ? onlyDay([join(last[3]!, last[2]!, last[1]!, last[4]!), join(last[3]!, last[1]!, last[2]!, last[4]!)]) : undefined
}

function join(year: string, month: string, day: string, time: string): string {
  const clock = time === '' ? '' : ` ${time.replace('T', ' ').trim().padStart(5, '0')}`
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}${clock}`
}

function onlyDay(candidates: readonly string[]): string | undefined {
  const days = [...new Set(candidates.filter(isDay))]
  return days.length === 1 ? days[0] : undefined
}
