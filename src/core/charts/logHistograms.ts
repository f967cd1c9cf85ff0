import type { EndName } from '../logs/mapping/mapping'
import type { Histogram } from '../logs/statistics/histogram'
import { printNumber } from '../notation/amount'
import { shownUnit, toShown, type DisplayUnits } from '../notation/displayUnits'
import { phrase, say } from '../words/say'
import type { Chart } from './chart'
import { endOf, histogramsOver, logsDrawn, type LoggedEntry } from './logSeries'
import type { ChartAxis } from './view'

interface Kind {
  key: 'position' | 'velocity'
  rows: readonly string[]
  /** The row of the grid its points lead to. */
  row: string
  title: Record<EndName, string>
  about: string
  axis: string
  unit: string
  digits: number
  pick: (logged: LoggedEntry, end: EndName) => Histogram | undefined
  note: (logged: LoggedEntry, end: EndName) => string[]
}

const kinds: readonly Kind[] = [
  {
    key: 'position', rows: ['median_mm', 'mean_mm', 'deepest_mm', 'deepest_pct', 'used', 'topped'], row: 'median_mm', unit: 'mm', digits: 0, axis: phrase('Position from fully extended'),
    title: { front: phrase('Positions, front'), rear: phrase('Positions, rear') },
    about: phrase('Where this end was, in shares of the time. Far left it hangs, far right it is on its stop.'),
    pick: (logged, end) => endOf(logged, end)?.position.histogramMm, note: ({ entry, log }, end) => {
      const position = log.statistics[end]?.position
      return position ? [say`${entry.key}: median ${printNumber(position.medianMm, 1)}, mean ${printNumber(position.meanMm, 1)}, deepest ${printNumber(position.deepestMm, 1)} mm.`] : []
    },
  },
  {
    key: 'velocity', rows: ['high_compression_pct', 'low_compression_pct', 'low_rebound_pct', 'high_rebound_pct'], row: 'low_rebound_pct', unit: 'mm/s', digits: 0, axis: phrase('Velocity, compression above zero'),
    title: { front: phrase('Velocities, front'), rear: phrase('Velocities, rear') },
    about: phrase('How fast this end moved, in shares of the time: rebound on the left, compression on the right, in bins alike on both sides.'),
    pick: (logged, end) => within(endOf(logged, end)?.velocity?.histogram), note: ({ entry, log }, end) => {
      const velocity = log.statistics[end]?.velocity
      const { points, order, spanS } = log.statistics.sampling.velocityFit
      if (!velocity) return []
      const { highCompression, lowCompression, lowRebound, highRebound } = velocity.sharesPct
      const [fast, slow, back, fastBack] = [highCompression, lowCompression, lowRebound, highRebound].map((share) => printNumber(share, 0)) as [string, string, string, string]
      return [
        say`${entry.key}: compression fast ${fast}, slow ${slow}, rebound slow ${back}, fast ${fastBack} % of the time; fast from ${velocity.lowHighLimitMmPerS.compression} mm/s.`,
        say`${entry.key}: velocity by Savitzky-Golay over ${points} samples (${printNumber(1000 * spanS, 0)} ms), order ${order}.`,
      ]
    },
  },
]

/** Bins on both sides of zero as far as either side has anything, in % of the time. */
function within(histogram: Histogram | undefined): Histogram | undefined {
  if (!histogram) return undefined
  const { sharesPct, bin } = histogram
  const middle = sharesPct.length / 2
  const used = sharesPct.flatMap((share, at) => (share > 0 ? [at] : []))
  const out = Math.max(1, middle - (used[0] ?? middle), (used.at(-1) ?? middle) + 1 - middle)
  return { bin, from: -out * bin, sharesPct: sharesPct.slice(middle - out, middle + out) }
}

function histogramChart(kind: Kind, end: EndName): Chart {
  const key = `log_${kind.key}_${end}`
  return {
    key, group: 'log', rows: kind.rows.map((row) => `log.${end}_${row}`),
    wanted: (notebook, entry, beside) => logsDrawn(notebook, entry, beside).some((logged) => kind.pick(logged, end)),
    build(notebook, entry, units, beside = []) {
      const drawn = logsDrawn(notebook, entry, beside)
      const all = drawn.flatMap((logged) => {
        const histogram = kind.pick(logged, end)
        return histogram ? [{ logged, ...histogram }] : []
      })
      const axis = axisOf(kind, units)
      return {
        key, title: say(kind.title[end]), about: say(kind.about), x: axis, y: { label: say('Share of the time'), unit: '%', digits: 1 }, bands: [],
        ...histogramsOver(all, { axis, unit: kind.unit, row: `computed/log.${end}_${kind.row}` }, units), notes: drawn.flatMap((logged) => kind.note(logged, end)),
      }
    },
  }
}

const axisOf = ({ axis, unit, digits }: Kind, units: DisplayUnits): ChartAxis => ({ label: say(axis), unit: shownUnit(unit, units), digits: toShown({ value: 0 }, unit, digits, units).digits })

/** Positions and velocities of both ends, of two or more entries over one another. */
export const logHistograms: readonly Chart[] = kinds.flatMap((kind) => (['front', 'rear'] as const).map((end) => histogramChart(kind, end)))
