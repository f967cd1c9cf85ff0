import { found } from '../compute/working/result'
import { readLogOf } from '../derived/logOf'
import type { ReadLog } from '../logs/atHand'
import type { EndName } from '../logs/mapping/mapping'
import type { EndStatistics } from '../logs/statistics/logStatistics'
import { printNumber } from '../notation/amount'
import type { DisplayUnits } from '../notation/displayUnits'
import { shownUnit, toShown } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { ChartAxis, ChartSeries, ChartTable } from './view'

/** An entry with its log. */
export interface LoggedEntry {
  entry: Entry
  log: ReadLog
}

/** So many logs over one another can still be told apart. */
const mostDrawn = 4

/**
 * The logs to be drawn over one another, that of the entry looked at first: those of the entries beside it where some
 * are named, else the nearest one before it. Where it has none itself, the nearest before it stands in.
 */
export function logsDrawn(notebook: Notebook, entry: Entry | undefined, beside: readonly Entry[]): LoggedEntry[] {
  const known = (entries: readonly (Entry | undefined)[]) => entries.flatMap((each): LoggedEntry[] => {
    const log = each && found(readLogOf(notebook, each))
    return log ? [{ entry: each, log }] : []
  })
  const before = [...notebook.entries.slice(0, entry?.index ?? 0)].reverse()
  const others = beside.filter((each) => each !== entry)
  const all = others.length > 0 ? known([entry, ...others]) : known([entry, ...before]).slice(0, 2)
  return all.filter(({ log }, at) => all.findIndex((each) => each.log === log) === at).slice(0, mostDrawn)
}

export const endOf = ({ log }: LoggedEntry, end: EndName): EndStatistics | undefined => log.statistics[end]

/** Shares of time in bins of equal width. */
export interface Binned {
  logged: LoggedEntry
  from: number
  bin: number
  sharesPct: readonly number[]
}

/** Histograms over one another, in the unit of their axis: a stepped line each, and one table of all. */
export function histogramsOver(all: readonly Binned[], { axis, unit, row }: { axis: ChartAxis; unit: string; row: string }, units: DisplayUnits): { series: ChartSeries[]; table: ChartTable } {
  const shown = (value: number) => toShown({ value }, unit, 1, units).value
  const edge = (value: number) => printNumber(shown(value), axis.digits)
  const range = (from: number, bin: number) => say`${edge(from)} to ${edge(from + bin)}`
  const symbol = shownUnit(unit, units)
  const series = all.map(({ logged: { entry }, from, bin, sharesPct }): ChartSeries => ({
    key: entry.key, label: entry.key, form: 'steps', entry: entry.key, row,
    x: sharesPct.map((_, at) => shown(from + (at + 0.5) * bin)), y: sharesPct.map(rounded),
    said: sharesPct.map((share, at) => say`${entry.key}: ${printNumber(share, 1)} % of the time from ${range(from + at * bin, bin)} ${symbol}`),
  }))
  const starts = [...new Set(all.flatMap(({ from, bin, sharesPct }) => sharesPct.map((_, at) => from + at * bin)))].sort((a, b) => a - b)
  const bin = all[0]?.bin ?? 1
  const shareAt = ({ from, sharesPct }: Binned, start: number) => sharesPct[Math.round((start - from) / bin)]
  return {
    series,
    table: {
      columns: [`${axis.label}, ${symbol}`, ...all.map(({ logged: { entry } }) => say`${entry.key}, % of the time`)],
      rows: starts.map((start) => [range(start, bin), ...all.map((each) => (shareAt(each, start) === undefined ? '0' : printNumber(shareAt(each, start)!, 1)))]),
    },
  }
}

/** What is drawn needs no more digits, and the page is sent them all. */
export const rounded = (value: number): number => Math.round(value * 100) / 100
