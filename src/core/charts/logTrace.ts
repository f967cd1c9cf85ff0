import { isMissing } from '../compute/working/result'
import { logPathOf, readLogOf } from '../derived/logOf'
import type { EndName } from '../logs/mapping/mapping'
import type { EndStatistics } from '../logs/statistics/logStatistics'
import type { LogTrace } from '../logs/statistics/trace'
import { printNumber } from '../notation/amount'
import { shownUnit, toShown, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import type { Chart } from './chart'
import { endOf, logsDrawn, rounded, type LoggedEntry } from './logSeries'
import { entryLookedAt } from './lookedAt'
import { endOfTrace, tracePath } from './tracePath'
import type { ChartSeries, ChartTable, ChartView } from './view'

const ends: readonly EndName[] = ['front', 'rear']
const tableRows = 40
const toldStops = 12
const onStop = { front: phrase('front on its stop'), rear: phrase('rear on its stop') } as const

/** Both ends over the time of the log of the entry looked at, and where they came onto their stops. */
export const logTrace: Chart = {
  key: 'log_trace', group: 'log', rows: ['log.read', ...ends.flatMap((end) => [`log.${end}_bottomed`, `log.${end}_packed`]), 'log.braking_front_mm'],
  build(notebook, entry, units) {
    const [logged] = logsDrawn(notebook, entry, [])
    const frame: ChartView = {
      key: 'log_trace', wide: true, title: logged ? say`Over time, ${logged.entry.key}` : say('Over time'),
      about: say('Both ends from the least to the most of each moment, so that no peak is lost; marks are where one is on its stop.'),
      x: { label: say('Time'), unit: 's', digits: 2 }, y: { label: say('Position'), unit: shownUnit('mm', units), digits: toShown({ value: 0 }, 'mm', 1, units).digits },
      series: [], bands: [], notes: [], table: { columns: [], rows: [] },
    }
    if (!logged) return { ...frame, wanting: wantingOf(notebook, entry) }
    return {
      ...frame, ...detailOf(logged), series: seriesOf(logged, units), table: tableOf(logged, units),
      notes: [...(logged.log.closer === 'reading' ? [say('The stretch in sight is being read more closely.')] : []), ...ends.flatMap((end) => stopNotes(end, endOf(logged, end)))],
    }
  },
}

/** The log that is drawn for an entry: the one a closer look is taken at. */
export function logTraced(notebook: Notebook, entryKey: string | undefined): string | undefined {
  const [logged] = logsDrawn(notebook, entryLookedAt(notebook, entryKey), [])
  return logged && logPathOf(logged.entry)
}

const closerOf = ({ log }: LoggedEntry, end: EndName): LogTrace | undefined => (log.closer === 'reading' ? undefined : log.closer?.[end])

function detailOf(logged: LoggedEntry): Pick<ChartView, 'detail'> {
  const drawn = ends.find((end) => endOf(logged, end)?.trace)
  const whole = drawn && endOf(logged, drawn)?.trace
  if (!whole) return {}
  const closer = closerOf(logged, drawn)
  return { detail: { step: whole.stepS, finest: 1 / logged.log.statistics.sampling.rateHz, ...(closer ? { closer: { from: closer.fromS, to: endOfTrace(closer), step: closer.stepS } } : {}) } }
}

function seriesOf(logged: LoggedEntry, units: DisplayUnits): ChartSeries[] {
  const shown = (mm: number) => rounded(toShown({ value: mm }, 'mm', 1, units).value)
  const { key } = logged.entry
  return ends.flatMap((name): ChartSeries[] => {
    const end = endOf(logged, name)
    if (!end?.trace) return []
    const places = end.bottoming?.places ?? []
    return [
      { key: name, label: say(name), form: 'line', entry: key, row: `computed/log.${name}_deepest_mm`, ...tracePath(end.trace, closerOf(logged, name), shown) },
      ...(places.length === 0 ? [] : [{
        key: `${name}_stops`, label: say(onStop[name]), form: 'marks' as const, entry: key, row: `computed/log.${name}_bottomed`,
        x: places.map(({ atS }) => rounded(atS)), y: places.map(({ extremeMm }) => shown(extremeMm)),
        said: places.map(({ atS, forS, extremeMm }) => say`${say(onStop[name])} at ${printNumber(atS, 2)} s for ${printNumber(forS, 3)} s, ${printNumber(extremeMm, 1)} mm`),
      }]),
    ]
  })
}

function stopNotes(end: EndName, statistics: EndStatistics | undefined): string[] {
  const bottoming = statistics?.bottoming
  if (!bottoming || bottoming.times === 0) return []
  const places = bottoming.places.slice(0, toldStops).map(({ atS }) => say`${printNumber(atS, 2)} s`).join(', ')
  if (bottoming.times === 1) return [say`${say(onStop[end])} once: ${places}.`]
  return [bottoming.times > toldStops ? say`${say(onStop[end])} ${bottoming.times} times: ${places} and more.` : say`${say(onStop[end])} ${bottoming.times} times: ${places}.`]
}

/** The log in so many stretches: from where to where each end went in them. */
function tableOf(logged: LoggedEntry, units: DisplayUnits): ChartTable {
  const traces = ends.flatMap((end) => {
    const trace = endOf(logged, end)?.trace
    return trace ? [{ end, trace }] : []
  })
  const { fromS, stepS, leastMm: { length } } = traces[0]!.trace
  const every = Math.max(1, Math.ceil(length / tableRows))
  const time = (at: number) => printNumber(fromS + at * stepS, 1)
  const figure = (mm: number) => printNumber(toShown({ value: mm }, 'mm', 1, units).value, 1)
  const stretch = ({ leastMm, mostMm }: LogTrace, at: number) => {
    const known = (values: Float32Array) => [...values.subarray(at, at + every)].filter((value) => !Number.isNaN(value))
    return known(leastMm).length === 0 ? '' : say`${figure(Math.min(...known(leastMm)))} to ${figure(Math.max(...known(mostMm)))}`
  }
  return {
    columns: [say('Time, s'), ...traces.map(({ end }) => `${say(end)}, ${shownUnit('mm', units)}`)],
    rows: Array.from({ length: Math.ceil(length / every) }, (_, row) => [say`${time(row * every)} to ${time(Math.min(length, (row + 1) * every))}`, ...traces.map(({ trace }) => stretch(trace, row * every))]),
  }
}

function wantingOf(notebook: Notebook, entry: Entry | undefined): string[] {
  const log = entry && readLogOf(notebook, entry)
  return [
    ...(entry && isMissing(log) ? [say`In ${entry.key} it needs ${log.missing.map((fact) => say(fact)).join(say(' and '))}.`] : [say('There is no entry yet.')]),
    say('Put the logger’s file beside the notebook and name it in an entry under `ride: log`, such as `log: logs/run-1.csv`; ‘Detent: Describe Logger…’ then tells which column is what.'),
  ]
}
