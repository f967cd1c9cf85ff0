import type { Counts } from './percentiles'

/** Shares of the samples in bins of equal width, in %. Bin i goes from `from` + i · `bin` up to and without the next. */
export interface Histogram {
  bin: number
  from: number
  sharesPct: number[]
}

/** A bin's edge is met by a value that falls short of it by its last bit. */
const rounding = 1e-9

/**
 * Shares of counted values in bins whose edges are whole multiples of `bin`, from the lowest value to the highest; or, where
 * `reach` is named, over all of that, within which the values have to be.
 */
export function histogram(counts: Counts, bin: number, reach?: { from: number; to: number }): Histogram {
  const { values, times } = counts
  const binOf = (value: number) => Math.floor(value / bin + rounding)
  const first = binOf(reach?.from ?? values[0] ?? 0)
  const last = binOf(reach?.to ?? values.at(-1) ?? 0)
  if (last - first > mostBins) return histogram(counts, bin * 10, reach)
  const bins = new Float64Array(last - first + 1)
  let n = 0
  for (let at = 0; at < values.length; at++) {
    bins[Math.floor(values[at]! / bin + rounding) - first]! += times[at]!
    n += times[at]!
  }
  if (n === 0) return { bin, from: 0, sharesPct: [] }
  return { bin, from: first * bin, sharesPct: Array.from(bins, (met) => (100 * met) / n) }
}

/** A glitch far away from all else must not make a list of millions; the bins are widened then, as `bin` says. */
const mostBins = 2000
