import type { LogTrace } from '../logs/statistics/trace'
import type { ChartSeries } from './view'

type Path = Pick<ChartSeries, 'x' | 'y'>

/** Where a trace ends, s. */
export const endOfTrace = ({ fromS, stepS, leastMm }: LogTrace): number => fromS + leastMm.length * stepS

/**
 * A trace as points: least and most of each piece, one behind the other. Of a stretch that is known more closely its own
 * points are taken, and of the whole those pieces that reach beyond it.
 */
export function tracePath(whole: LogTrace, closer: LogTrace | undefined, shown: (mm: number) => number): Path {
  if (!closer) return pathOf(whole, shown, () => true)
  const [from, to] = [closer.fromS, endOfTrace(closer)]
  const parts = [pathOf(whole, shown, (start, end) => start < from || end > to), pathOf(closer, shown, () => true)]
  const points = parts.flatMap(({ x, y }) => x.map((place, at) => [place, y[at]!] as const)).sort(([a], [b]) => a - b)
  return { x: points.map(([x]) => x), y: points.map(([, y]) => y) }
}

function pathOf({ fromS, stepS, leastMm, mostMm }: LogTrace, shown: (mm: number) => number, wanted: (start: number, end: number) => boolean): Path {
  const [x, y]: [number[], (number | null)[]] = [[], []]
  const digits = 10 ** Math.max(0, Math.ceil(-Math.log10(stepS)) + 2)
  const place = (at: number) => Math.round((fromS + at * stepS) * digits) / digits
  leastMm.forEach((least, at) => {
    const most = mostMm[at]!
    if (Number.isNaN(least) || !wanted(fromS + at * stepS, fromS + (at + 1) * stepS)) return
    x.push(place(at))
    y.push(shown(least))
    if (most === least) return
    x.push(place(at + 0.5))
    y.push(shown(most))
  })
  return { x, y }
}
