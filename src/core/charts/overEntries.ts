import { found, type Outcome, type Result } from '../compute/working/result'
import { printShown, shownUnit, toShown, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { capital } from '../words/sentence'
import type { ChartAxis, ChartSeries, ChartTable } from './view'

/** One number followed from entry to entry. */
export interface Followed {
  key: string
  label: string
  /** The computed row it stands in. */
  row: string
  of: (entry: Entry) => Outcome
  /** How a number is judged: `brief` for a table under `heading`, `words` as they end a sentence. */
  judge?: { heading: string; brief: (result: Result) => string; words: (result: Result) => string }
}

/**
 * Numbers over the entries of a notebook, in the order of the file; only entries in which one of them is known have a
 * place, so that a few readings in a long season stand beside one another. `unit` and `digits` are the format's own.
 */
export function overEntries({ entries }: Notebook, followed: readonly Followed[], { unit, digits, label, span }: ChartAxis, units: DisplayUnits): {
  x: ChartAxis
  y: ChartAxis
  series: ChartSeries[]
  table: ChartTable
} {
  const known = entries.map((entry) => ({ entry, results: followed.map(({ of }) => found(of(entry))) })).filter(({ results }) => results.some(Boolean))
  const shown = shownUnit(unit, units)
  const print = (result: Result) => printShown(result, unit, digits, units)
  const withUnit = (text: string) => (shown === '' ? text : shown === '°' ? `${text}°` : `${text} ${shown}`)
  const series = followed.map(({ key, label: phrase, row, judge }, place): ChartSeries => {
    const name = say(phrase)
    const own = known.flatMap(({ entry, results }, at) => (results[place] ? [{ at, entry, result: results[place], ...toShown(results[place], unit, digits, units) }] : []))
    return {
      key, label: name, form: 'line', row: `computed/${row}`, x: own.map(({ at }) => at), y: own.map(({ value }) => value), entries: own.map(({ entry }) => entry.key),
      said: own.map(({ entry, result }) => [`${entry.key}, ${name}: ${withUnit(print(result))}`, judge?.words(result)].filter(Boolean).join(', ')),
      ...(own.some(({ u }) => u !== undefined) ? { u: own.map(({ u }) => u ?? null) } : {}),
    }
  }).filter(({ x }) => x.length > 0)
  const cells = ({ judge }: Followed, result: Result | undefined) => [result ? print(result) : '', ...(judge ? [result ? judge.brief(result) : ''] : [])]
  return {
    x: { label: say('Entry'), unit: '', digits: 0, names: known.map(({ entry }) => entry.key) },
    y: { label: say(label), unit: shown, digits: toShown({ value: 0 }, unit, digits, units).digits, ...(span === undefined ? {} : { span: toShown({ value: span }, unit, digits, units).value }) },
    series,
    table: {
      columns: [say('Entry'), ...followed.flatMap(({ label: name, judge }) => [headed(say(name), shown), ...(judge ? [judge.heading] : [])])],
      rows: known.map(({ entry, results }) => [entry.key, ...followed.flatMap((each, place) => cells(each, results[place]))]),
    },
  }
}

/** The head of a column of numbers. @example headed('bike alone', 'mm') // 'Bike alone, mm' */
export function headed(name: string, unit: string): string {
  return unit === '' ? capital(name) : `${capital(name)}, ${unit}`
}
