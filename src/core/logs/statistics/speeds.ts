import { histogram, type Histogram } from './histogram'
import { countOf, percentiles, type Counts } from './percentiles'

/** Limits between low and high speed, mm/s, above zero both. Measured values lie on either side of them, never on both. */
export interface SpeedLimits {
  compressionMmPerS: number
  reboundMmPerS: number
}

export interface SpeedOptions {
  limits: SpeedLimits
  /** Width of a bin of the histogram. */
  binMmPerS: number
  /** How far the histogram reaches either way; what is beyond is told as tails. */
  toMmPerS: number
}

/** Velocities of one end. Compression is above zero, rebound below. */
export interface SpeedStatistics {
  samples: number
  fastestCompressionMmPerS: number
  fastestReboundMmPerS: number
  rmsMmPerS: number
  percentilesMmPerS: Record<string, number>
  lowHighLimitMmPerS: { compression: number; rebound: number }
  /** Shares of the samples, in %; they add up to 100 with `still`. */
  sharesPct: { highRebound: number; lowRebound: number; still: number; lowCompression: number; highCompression: number }
  /** Of equal bins, symmetric about zero. */
  histogram: Histogram & { belowPct: number; abovePct: number }
  resolutionMmPerS: number
}

/** Speeds are counted in steps of this, mm/s: each at the nearest. */
const step = 0.1
const perStep = 10
/** So near the middle between two steps is on it: the last bits of a velocity depend on how it was summed. */
const rounding = 1e-5
/** As far as they are counted step by step. */
const reach = 10_000
const side = reach * perStep
const wantedPercentiles = [1, 5, 25, 50, 75, 95, 99]

/** Counts velocities as they come; the memory it takes is fixed. */
export class Speeds {
  /** By steps; the middle one holds what is still. Both ends hold what is beyond as well. */
  readonly #counts = new Uint32Array(2 * side + 1)
  #count = 0

  add(values: Float64Array, count: number): void {
    const counts = this.#counts
    for (let at = 0; at < count; at++) {
      const place = values[at]! * perStep + (side + 0.5 + rounding)
      const near = place | 0
      const step = place >= 0 && near >>> 0 < 2 * side + 1 ? near : place < 0 ? 0 : 2 * side
      counts[step] = (counts[step]! + 1) | 0
    }
    this.#count += count
  }

  /** `undefined` where no velocity is known. */
  summary({ limits, binMmPerS, toMmPerS }: SpeedOptions): SpeedStatistics | undefined {
    if (this.#count === 0) return undefined
    const all = this.#met()
    const share = (times: number) => (100 * times) / this.#count
    const still = this.#counts[side]!
    const high = from(all, limits.compressionMmPerS)
    const low = from(all, step) - high
    const rebound = this.#count - from(all, 0)
    const fastRebound = this.#count - from(all, -limits.reboundMmPerS)
    const found = percentiles(all, wantedPercentiles)
    return {
      samples: this.#count, fastestCompressionMmPerS: Math.max(0, all.values.at(-1)!), fastestReboundMmPerS: Math.max(0, -all.values[0]!),
      rmsMmPerS: Math.sqrt(squaresOf(all) / this.#count),
      percentilesMmPerS: Object.fromEntries(wantedPercentiles.map((percent, at) => [`p${percent}`, found[at]!])),
      lowHighLimitMmPerS: { compression: limits.compressionMmPerS, rebound: limits.reboundMmPerS },
      sharesPct: { highRebound: share(fastRebound), lowRebound: share(rebound - fastRebound), still: share(still), lowCompression: share(low), highCompression: share(high) },
      histogram: this.#histogram(all, binMmPerS, toMmPerS), resolutionMmPerS: step,
    }
  }

  #histogram(all: Counts, bin: number, to: number): SpeedStatistics['histogram'] {
    const reached = Math.ceil(to / bin) * bin
    const [least, most] = [firstAt(all, -reached), firstAt(all, reached)]
    const within = { values: all.values.subarray(least, most), times: all.times.subarray(least, most) }
    const { from: begin, sharesPct } = histogram(within, bin, { from: -reached, to: reached - step })
    const n = countOf(within)
    const [below, above] = [this.#count - from(all, -reached), from(all, reached)]
    const ofAll = (pct: number) => (n === 0 ? 0 : (pct * n) / this.#count)
    return { bin, from: begin, sharesPct: sharesPct.map(ofAll), belowPct: (100 * below) / this.#count, abovePct: (100 * above) / this.#count }
  }

  /** Every speed that was met, to the step, and how often; rising. */
  #met(): Counts {
    const counts = this.#counts
    let met = 0
    for (let at = 0; at < counts.length; at++) if (counts[at]! > 0) met++
    const [values, times] = [new Float64Array(met), new Float64Array(met)]
    let into = 0
    for (let at = 0; at < counts.length; at++) {
      if (counts[at]! === 0) continue
      values[into] = (at - side) / perStep
      times[into++] = counts[at]!
    }
    return { values, times }
  }
}

/** The place of the first that is this fast or faster, on the steps' grid. */
function firstAt({ values }: Counts, speed: number): number {
  const least = (Math.round(speed * perStep) - 0.5) / perStep
  let at = 0
  while (at < values.length && values[at]! < least) at++
  return at
}

/** How many are at this speed or above, on the steps' grid. */
function from(all: Counts, speed: number): number {
  return countOf({ values: all.values, times: all.times.subarray(firstAt(all, speed)) })
}

function squaresOf({ values, times }: Counts): number {
  let sum = 0
  for (let at = 0; at < values.length; at++) sum += values[at]! * values[at]! * times[at]!
  return sum
}
