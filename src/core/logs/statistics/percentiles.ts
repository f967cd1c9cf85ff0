/** Values and how often each was met, rising. Arrays of numbers, for there may be a hundred thousand of them. */
export interface Counts {
  values: Float64Array
  times: Float64Array
}

/** Counts of values and times that come in pairs, rising. @example countsOf([[1, 2], [4, 1]]) */
export function countsOf(pairs: readonly (readonly [value: number, times: number])[]): Counts {
  return { values: Float64Array.from(pairs, ([value]) => value), times: Float64Array.from(pairs, ([, times]) => times) }
}

/**
 * Percentiles of counted values, by linear interpolation between the two values nearest in rank: rank = share · (n − 1),
 * the method that numpy calls `linear` and R type 7. `NaN` for no values.
 *
 * Source: R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361, definition 7.
 * @example percentiles(countsOf([[1, 1], [2, 1], [3, 1], [4, 1], [8, 1]]), [50, 40]) // [3, 2.6]
 */
export function percentiles({ values, times }: Counts, wanted: readonly number[]): number[] {
  const passed = new Float64Array(times.length)
  let n = 0
  for (let at = 0; at < times.length; at++) {
    n += times[at]!
    passed[at] = n
  }
  return wanted.map((percent) => {
    if (n === 0) return NaN
    const rank = (percent / 100) * (n - 1)
    const low = Math.floor(rank)
    const [below, above] = [values[firstBeyond(passed, low)]!, values[firstBeyond(passed, Math.min(low + 1, n - 1))]!]
    return below + (rank - low) * (above - below)
  })
}

/** The first place where more have passed than `rank`. */
function firstBeyond(passed: Float64Array, rank: number): number {
  let [from, to] = [0, passed.length - 1]
  while (from < to) {
    const middle = (from + to) >> 1
    if (passed[middle]! > rank) to = middle
    else from = middle + 1
  }
  return from
}

/** How many values there are. */
export function countOf({ times }: Counts): number {
  let n = 0
  for (let at = 0; at < times.length; at++) n += times[at]!
  return n
}

/** The mean of counted values. */
export function meanOf({ values, times }: Counts): number {
  let sum = 0
  let n = 0
  for (let at = 0; at < times.length; at++) {
    sum += values[at]! * times[at]!
    n += times[at]!
  }
  return sum / n
}
