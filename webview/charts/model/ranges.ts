import type { ChartSeries, ChartView } from '../../../src/core/charts/view'

export type Range = readonly [from: number, to: number]

/** All of x, with half a place on either side where places have names or bars stand on them. */
export function rangeOfX({ x, series }: ChartView): Range {
  if (x.names) return [-0.5, Math.max(x.names.length, 1) - 0.5]
  const [from, to] = extent(series.flatMap((each) => extent(each.x)))
  const half = Math.max(0, ...series.filter(({ form }) => form === 'bars' || form === 'steps' || form === 'cells').map(halfBar))
  const [low, high] = [from - half, to + half]
  return low < high ? [low, high] : [low - 0.5, high + 0.5]
}

/** All of y: points with their whiskers, windows, and zero under bars; a little room around. */
export function rangeOfY({ y: axis, series, bands }: ChartView): Range {
  const ends = series.flatMap(({ y, u, form, cell }) => [
    ...(form === 'bars' || form === 'steps' ? [0] : []),
    ...extent(y.flatMap((value, at) => (value === null ? [] : [value - (u?.[at] ?? (cell?.[1] ?? 0) / 2), value + (u?.[at] ?? (cell?.[1] ?? 0) / 2)]))),
  ])
  const [low, high] = extent([...ends, ...bands.flatMap(({ from, to }) => [from, to])])
  const room = Math.max((high - low || Math.abs(high) || 1) * 0.08, ((axis.span ?? 0) - (high - low)) / 2)
  const bars = series.some(({ form }) => form === 'bars' || form === 'steps')
  return [bars && low === 0 ? 0 : low - room, high + room]
}

/** Half the distance of neighbouring bars. */
function halfBar({ x, cell }: ChartSeries): number {
  if (cell) return cell[0] / 2
  let least = Infinity
  for (let at = 1; at < x.length; at++) least = Math.min(least, x[at]! - x[at - 1]!)
  return Number.isFinite(least) && least > 0 ? least / 2 : 0.5
}

function extent(values: readonly number[]): Range {
  let [low, high] = [Infinity, -Infinity]
  for (const value of values) {
    if (value < low) low = value
    if (value > high) high = value
  }
  return low <= high ? [low, high] : [0, 0]
}

/** A stretch `by` times as long around a place in it, no longer than all there is and within that. */
export function zoomed([from, to]: Range, by: number, around: number, [low, high]: Range): Range {
  const length = Math.min((to - from) * by, high - low)
  const share = to > from ? (around - from) / (to - from) : 0.5
  return slid(around - length * share, length, [low, high])
}

/** The stretch moved as little as shows a place. */
export function shifted(range: Range, place: number, all: Range): Range {
  const [from, to] = range
  if (place >= from && place <= to) return range
  return slid(place < from ? place - (to - from) * 0.1 : place - (to - from) * 0.9, to - from, all)
}

function slid(from: number, length: number, [low, high]: Range): Range {
  const start = Math.min(Math.max(from, low), high - length)
  return [start, start + length]
}
