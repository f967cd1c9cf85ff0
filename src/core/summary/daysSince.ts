import { isDay } from '../rules/unreadableDate'
import { say } from '../words/say'

const msInDay = 86_400_000

/**
 * How many days lie between the day of an entry and today, both as YYYY-MM-DD with or without a time; below zero for a
 * day that is yet to come. `undefined` where either is no day of the calendar.
 *
 * @example daysSince('2026-02-28', '2026-03-01') // 1
 */
export function daysSince(date: string, today: string): number | undefined {
  if (!isDay(date) || !isDay(today)) return undefined
  return Math.round((dayOf(today) - dayOf(date)) / msInDay)
}

/** That in words. @example daysWords(12) // '12 days ago' */
export function daysWords(days: number): string {
  if (days < 0) return say('dated ahead')
  if (days === 0) return say('today')
  return days === 1 ? say('yesterday') : say`${days} days ago`
}

/** Reckoned in days of the calendar alone, so that no change of the clocks makes one of 23 hours. */
function dayOf(date: string): number {
  return Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)) - 1, Number(date.slice(8, 10)))
}
