import type { Column } from '../../../src/core/grid/view'

/** What can be asked for by name: `verdict:keep`. */
const named = {
  name: ({ id }: Column) => id,
  date: ({ date }: Column) => date,
  session: ({ session }: Column) => session ?? '',
  verdict: ({ verdict }: Column) => verdict,
  reason: ({ reason }: Column) => reason,
}

const comparisons: Record<string, (a: string, b: string) => boolean> = {
  '>=': (a, b) => a >= b, '<=': (a, b) => a.slice(0, b.length) <= b, '>': (a, b) => a.slice(0, b.length) > b, '<': (a, b) => a < b,
}

/**
 * Which entries pass: all the words must be found, whatever their case. A word may say where, with quotes around several,
 * and a day may be an end.
 *
 * @example 'wet', 'verdict:keep', 'session:"Friday afternoon"', '>=2026-04-18 <2026-05'
 */
export function entryFilter(words: string): (column: Column) => boolean {
  const tests = (words.toLowerCase().match(/(?:[^\s"]|"[^"]*"?)+/g) ?? []).map((word) => testOf(word.replaceAll('"', '')))
  return (column) => tests.every((test) => test(column))
}

function testOf(word: string): (column: Column) => boolean {
  const [, operator, day] = /^(?:date:)?([<>]=?)(\d[\d-]*)$/.exec(word) ?? []
  if (operator && day) return ({ date }) => date !== '' && comparisons[operator]!(date, day)
  const [, name, sought] = /^([a-z]+):(.+)$/.exec(word) ?? []
  const field = name && Object.hasOwn(named, name) ? named[name as keyof typeof named] : undefined
  if (field && sought) return (column) => field(column).toLowerCase().includes(sought)
  return (column) => Object.values(named).some((read) => read(column).toLowerCase().includes(word))
}
