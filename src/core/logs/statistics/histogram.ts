import type { Counts } from './percentiles'

/** Shares of the samples in bins of equal width, in %. Bin i goes from `from` + i · `bin` up to and without the next. */
export interface Histogram {
  bin: number
  from: number
  sharesPct: number[]
}

/** A bin's edge is met by a value that falls short of it by its last bit. */
const rounding = 1e-9

/** Shares of counted values in bins whose edges are whole multiples of `bin`, from the lowest value to the highest. */
export function histogram(counts: Counts, bin: number): Histogram {
  const bins = new Map<number, number>()
  let n = 0
  for (const [value, times] of counts) {
    const at = Math.floor(value / bin + rounding)
    bins.set(at, (bins.get(at) ?? 0) + times)
    n += times
  }
  if (n === 0) return { bin, from: 0, sharesPct: [] }
  const [first, last] = [Math.min(...bins.keys()), Math.max(...bins.keys())]
  if (last - first > mostBins) return histogram(counts, bin * 10)
  return { bin, from: first * bin, sharesPct: Array.from({ length: last - first + 1 }, (_, at) => (100 * (bins.get(first + at) ?? 0)) / n) }
}

/** A glitch far away from all else must not make a list of millions; the bins are widened then, as `bin` says. */
const mostBins = 2000
