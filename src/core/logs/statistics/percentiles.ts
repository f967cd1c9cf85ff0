/** Values and how often each was met, rising. */
export type Counts = Iterable<readonly [value: number, times: number]>

/**
 * Percentiles of counted values, by linear interpolation between the two values nearest in rank: rank = share · (n − 1),
 * the method that numpy calls `linear` and R type 7. `NaN` for no values.
 *
 * Source: R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361, definition 7.
 * @example percentiles([[1, 1], [2, 1], [3, 1], [4, 1], [8, 1]], [50, 40]) // [3, 2.6]
 */
export function percentiles(counts: Counts, wanted: readonly number[]): number[] {
  const all = [...counts]
  const n = all.reduce((sum, [, times]) => sum + times, 0)
  return wanted.map((percent) => {
    if (n === 0) return NaN
    const rank = (percent / 100) * (n - 1)
    const low = Math.floor(rank)
    const [below, above] = [valueAt(all, low), valueAt(all, Math.min(low + 1, n - 1))]
    return below + (rank - low) * (above - below)
  })
}

function valueAt(all: readonly (readonly [number, number])[], rank: number): number {
  let passed = 0
  for (const [value, times] of all) {
    passed += times
    if (rank < passed) return value
  }
  return NaN
}

/** The mean of counted values. */
export function meanOf(counts: Counts): number {
  let [sum, n] = [0, 0]
  for (const [value, times] of counts) {
    sum += value * times
    n += times
  }
  return sum / n
}
