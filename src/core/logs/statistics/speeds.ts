import { histogram, type Histogram } from './histogram'
import { percentiles } from './percentiles'

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

/** Speeds are counted in steps of this, mm/s. */
const step = 0.1
/** So near an edge is on it: the last bits of a velocity depend on how it was summed. */
const rounding = 1e-5
const perStep = 10
/** As far as they are counted step by step. */
const reach = 10_000
const side = reach * perStep
const stillBelow = rounding / perStep
const wantedPercentiles = [1, 5, 25, 50, 75, 95, 99]

/** Counts velocities as they come; the memory it takes is fixed. */
export class Speeds {
  /** By steps, each from its place up to and without the next; the middle one holds zero and what is just above. */
  readonly #counts = new Uint32Array(2 * side)
  #zero = 0
  #count = 0
  #squares = 0
  #least = Infinity
  #most = -Infinity
  #below = 0
  #above = 0

  add(values: Float64Array, count: number): void {
    const counts = this.#counts
    let squares = 0
    let zero = 0
    let least = this.#least
    let most = this.#most
    for (let at = 0; at < count; at++) {
      const value = values[at]!
      const place = value * perStep + (side + rounding)
      if (place >= 0 && place < 2 * side) counts[place | 0]!++
      else if (value < 0) this.#below++
      else this.#above++
      if (value < stillBelow && value > -stillBelow) zero++
      if (value < least) least = value
      if (value > most) most = value
      squares += value * value
    }
    this.#count += count
    this.#squares += squares
    this.#zero += zero
    this.#least = least
    this.#most = most
  }

  /** `undefined` where no velocity is known. */
  summary({ limits, binMmPerS, toMmPerS }: SpeedOptions): SpeedStatistics | undefined {
    if (this.#count === 0) return undefined
    const share = (times: number) => (100 * times) / this.#count
    const high = this.#from(limits.compressionMmPerS)
    const low = this.#from(0) - this.#zero - high
    const fastRebound = this.#count - this.#from(-limits.reboundMmPerS)
    const rebound = this.#count - this.#from(0)
    const found = percentiles(this.#each(), wantedPercentiles)
    return {
      samples: this.#count, fastestCompressionMmPerS: Math.max(0, this.#most), fastestReboundMmPerS: Math.max(0, -this.#least), rmsMmPerS: Math.sqrt(this.#squares / this.#count),
      percentilesMmPerS: Object.fromEntries(wantedPercentiles.map((percent, at) => [`p${percent}`, found[at]!])),
      lowHighLimitMmPerS: { compression: limits.compressionMmPerS, rebound: limits.reboundMmPerS },
      sharesPct: { highRebound: share(fastRebound), lowRebound: share(rebound - fastRebound), still: share(this.#zero), lowCompression: share(low), highCompression: share(high) },
      histogram: this.#histogram(binMmPerS, toMmPerS), resolutionMmPerS: step,
    }
  }

  /** How many are at this speed or above, on the steps' grid. */
  #from(speed: number): number {
    let sum = this.#above
    for (let at = Math.max(0, Math.round(speed * perStep) + side); at < 2 * side; at++) sum += this.#counts[at]!
    return sum
  }

  #histogram(bin: number, to: number): SpeedStatistics['histogram'] {
    const reached = Math.ceil(to / bin) * bin
    const within = [...this.#each()].filter(([value]) => value >= -reached && value < reached)
    const { from, sharesPct } = histogram([[-reached, 0], ...within, [reached - step, 0]], bin)
    const n = within.reduce((sum, [, times]) => sum + times, 0)
    const [below, above] = [this.#count - this.#from(-reached), this.#from(reached)]
    const ofAll = (pct: number) => (pct * n) / this.#count
    return { bin, from, sharesPct: sharesPct.map(ofAll), belowPct: (100 * below) / this.#count, abovePct: (100 * above) / this.#count }
  }

  /** By steps, each told by its lower edge. */
  *#each(): Generator<[number, number]> {
    if (this.#below > 0) yield [-reach, this.#below]
    for (let at = 0; at < 2 * side; at++) if (this.#counts[at]! > 0) yield [(at - side) / perStep, this.#counts[at]!]
    if (this.#above > 0) yield [reach, this.#above]
  }
}
