import type { ChartSeries } from '../../../src/core/charts/view'

/** A point: of which series, and which of it. */
export interface PointSpot {
  series: number
  at: number
}

export const samePoint = (a: PointSpot | undefined, b: PointSpot | undefined): boolean => a?.series === b?.series && a?.at === b?.at

const isPoint = (series: ChartSeries, at: number): boolean => series.y[at] !== null && series.y[at] !== undefined

/** The next point of the same series, `by` of them on; the last there is where there are not so many. Places without a value are passed over. */
export function stepAlong(series: readonly ChartSeries[], from: PointSpot, by: number): PointSpot {
  const own = series[from.series]
  if (!own) return from
  const way = Math.sign(by)
  let [left, last] = [Math.abs(by), from.at]
  for (let at = from.at + way; left > 0 && at >= 0 && at < own.x.length; at += way) {
    if (!isPoint(own, at)) continue
    last = at
    left--
  }
  return { series: from.series, at: last }
}

/** The first or last point of the same series. */
export const toEnd = (series: readonly ChartSeries[], from: PointSpot, last: boolean): PointSpot => stepAlong(series, from, last ? Infinity : -Infinity)

/**
 * The line above or below: of every other series the point nearest in x, and of these the next one up or down. Where
 * two lie on each other their order in the list decides, so that none is out of reach.
 */
export function stepAcross(series: readonly ChartSeries[], from: PointSpot, up: boolean): PointSpot {
  const here = series[from.series]
  const [x, y] = [here?.x[from.at], here?.y[from.at]]
  if (x === undefined || y === null || y === undefined) return from
  const rank = (spot: PointSpot) => [series[spot.series]!.y[spot.at]!, spot.series] as const
  const higher = (a: readonly [number, number], b: readonly [number, number]) => a[0] > b[0] || (a[0] === b[0] && a[1] > b[1])
  const others = series.flatMap((_, place) => (place === from.series ? [] : (nearestInX(series, place, x) ?? [])))
  const beyond = others.filter((spot) => (up ? higher(rank(spot), rank(from)) : higher(rank(from), rank(spot))))
  const nearest = (a: PointSpot, b: PointSpot) => (higher(rank(a), rank(b)) === up ? b : a)
  return beyond.length === 0 ? from : beyond.reduce(nearest)
}

/** The point of a series nearest to a place along x. */
export function nearestInX(series: readonly ChartSeries[], place: number, x: number): PointSpot | undefined {
  const own = series[place]!
  let best: number | undefined
  for (let at = 0; at < own.x.length; at++) {
    if (isPoint(own, at) && (best === undefined || Math.abs(own.x[at]! - x) < Math.abs(own.x[best]! - x))) best = at
  }
  return best === undefined ? undefined : { series: place, at: best }
}

/** The point nearest to one on the page, no further than `within` px; `place` tells where a point is drawn. */
export function nearestTo(series: readonly ChartSeries[], [px, py]: readonly [number, number], within: number, place: (x: number, y: number) => readonly [number, number]): PointSpot | undefined {
  let best: PointSpot | undefined
  let distance = within * within
  series.forEach(({ x, y }, index) => {
    for (let at = 0; at < x.length; at++) {
      const value = y[at]
      if (value === null || value === undefined) continue
      const [left, top] = place(x[at]!, value)
      const away = (left - px) ** 2 + (top - py) ** 2
      if (away <= distance) [best, distance] = [{ series: index, at }, away]
    }
  })
  return best
}

/** Where to stand first: on the newest point of the given entry, else on the last point of the first series that has one. */
export function firstPoint(series: readonly ChartSeries[], entry?: string): PointSpot | undefined {
  for (const [index, { entries, x }] of series.entries()) {
    if (entry === undefined || !entries) continue
    for (let at = x.length - 1; at >= 0; at--) if (entries[at] === entry && isPoint(series[index]!, at)) return { series: index, at }
  }
  for (const [index, own] of series.entries()) {
    for (let at = own.x.length - 1; at >= 0; at--) if (isPoint(own, at)) return { series: index, at }
  }
  return undefined
}

/** The same point in newer data: by the series' key, then its entry where that names one point of it, else its place along x. */
export function keepPoint(before: readonly ChartSeries[], spot: PointSpot | undefined, now: readonly ChartSeries[]): PointSpot | undefined {
  const old = spot && before[spot.series]
  const series = old ? now.findIndex(({ key }) => key === old.key) : -1
  if (!spot || !old || series < 0) return undefined
  const own = now[series]!
  const entry = old.entries?.[spot.at]
  const matches = entry === undefined ? [] : own.x.flatMap((_, at) => (own.entries?.[at] === entry && isPoint(own, at) ? [at] : []))
  return matches.length === 1 ? { series, at: matches[0]! } : nearestInX(now, series, old.x[spot.at]!)
}
