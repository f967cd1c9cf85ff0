import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import type { Chart } from './chart'
import { logsDrawn, rounded, type LoggedEntry } from './logSeries'
import type { ChartSeries, ChartView } from './view'

/** Where the rear was as often as so many % of the time, a mean of the front is told. */
const leastPct = 0.1

/** The front over the rear: where both were together, and how the front goes with the rear in each log. */
export const logFrontRear: Chart = {
  key: 'log_front_rear', group: 'log', rows: ['log.front_ahead_pct', 'log.pitch_deg', 'log.rake_deg'],
  wanted: (notebook, entry, beside) => logsDrawn(notebook, entry, beside).some(({ log }) => log.statistics.frontRear),
  build(notebook, entry, _units, beside = []) {
    const drawn = logsDrawn(notebook, entry, beside).filter(({ log }) => log.statistics.frontRear)
    const [first] = drawn
    return {
      key: 'log_front_rear', title: say('Front over rear'),
      about: say('The fuller a square, the more of the time both ends were there together. Lines are the mean of the front where the rear is.'),
      x: { label: say('Rear'), unit: '%', digits: 0 }, y: { label: say('Front'), unit: '%', digits: 0 }, bands: [],
      series: [...(first ? [squaresOf(first)] : []), ...drawn.map(meansOf)], notes: drawn.map(noteOf), table: tableOf(drawn),
    }
  },
}

const middle = (bin: number, binPct: number): number => (bin + 0.5) * binPct

function squaresOf({ entry, log }: LoggedEntry): ChartSeries {
  const { sharesPct, binPct } = log.statistics.frontRear!
  const most = Math.max(...sharesPct.flat())
  const squares = sharesPct.flatMap((row, front) => row.flatMap((share, rear) => (share > 0 ? [{ front, rear, share }] : []))).sort((a, b) => a.rear - b.rear || a.front - b.front)
  const range = (bin: number) => say`${bin * binPct} to ${(bin + 1) * binPct} %`
  return {
    key: `${entry.key} squares`, label: say`${entry.key}, shares of the time`, form: 'cells', entry: entry.key, row: 'computed/log.front_ahead_pct', cell: [binPct, binPct],
    x: squares.map(({ rear }) => middle(rear, binPct)), y: squares.map(({ front }) => middle(front, binPct)), weight: squares.map(({ share }) => rounded(share / most)),
    said: squares.map(({ front, rear, share }) => say`${entry.key}: rear ${range(rear)}, front ${range(front)}: ${printNumber(share, 2)} % of the time`),
  }
}

/** The mean of the front by where the rear is; nothing where it hardly ever was. */
function meansOf({ entry, log }: LoggedEntry): ChartSeries {
  const points = meansBy(log)
  return {
    key: entry.key, label: say`${entry.key}, mean`, form: 'line', entry: entry.key, row: 'computed/log.front_ahead_pct',
    x: points.map(({ rear }) => rear), y: points.map(({ front }) => rounded(front)),
    said: points.map(({ rear, front }) => say`${entry.key}: rear about ${printNumber(rear, 1)} %, front ${printNumber(front, 0)} % on average`),
  }
}

function meansBy(log: LoggedEntry['log']): { rear: number; front: number; share: number }[] {
  const { sharesPct, binPct } = log.statistics.frontRear!
  return sharesPct.map((_, rear) => {
    const column = sharesPct.map((row) => row[rear]!)
    const share = column.reduce((sum, each) => sum + each, 0)
    return { rear: middle(rear, binPct), share, front: column.reduce((sum, each, front) => sum + each * middle(front, binPct), 0) / share }
  }).filter(({ share }) => share >= leastPct)
}

function noteOf({ entry, log }: LoggedEntry): string {
  const { correlation, frontAheadPct } = log.statistics.frontRear!
  return say`${entry.key}: the front is ${printNumber(frontAheadPct, 0)} % of travel further in than the rear on average, correlation ${printNumber(correlation, 2)}.`
}

function tableOf(drawn: readonly LoggedEntry[]): ChartView['table'] {
  const means = drawn.map(({ log }) => meansBy(log))
  const places = [...new Set(means.flatMap((points) => points.map(({ rear }) => rear)))].sort((a, b) => a - b)
  return {
    columns: [say('Rear, %'), ...drawn.flatMap(({ entry }) => [say`${entry.key}, front on average, %`, say`${entry.key}, % of the time`])],
    rows: places.map((rear) => [printNumber(rear, 1), ...means.flatMap((points) => {
      const point = points.find((each) => each.rear === rear)
      return point ? [printNumber(point.front, 0), printNumber(point.share, 1)] : ['', '']
    })]),
  }
}
