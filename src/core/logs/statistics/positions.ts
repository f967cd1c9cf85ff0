import type { Channel } from '../mapping/resolveMapping'
import type { LogOptions } from '../options'
import { CountedValues } from './countedValues'
import { histogram } from './histogram'
import type { PositionStatistics } from './logStatistics'
import { plausible } from './plausible'
import { countOf, meanOf, percentiles, type Counts } from './percentiles'

/** Counts positions of one end as they come: those of the sensor, which are on its own grid, and turned into wheel travel only when told. */
export class Positions {
  readonly #counted: CountedValues
  #deepest = { mm: -Infinity, atS: NaN }
  #least = { mm: Infinity, atS: NaN }

  constructor(readonly channel: Channel) {
    const { travelMm, factor } = channel
    const { least, most } = plausible(travelMm)
    this.#counted = new CountedValues({ from: least, to: most, unit: Math.abs(factor) })
  }

  /** Samples of the sensor, mm. NaN among them is passed over. */
  count(values: Float64Array, from: number, to: number): void {
    this.#counted.add(values, from, to)
  }

  /** The furthest so far, at the wheel. */
  get furthest(): { deepest: number; least: number } {
    return { deepest: this.#deepest.mm, least: this.#least.mm }
  }

  /** The furthest of the samples, at the wheel; both are returned, for whoever watches the stops. */
  extremes(times: Float64Array, wheel: Float64Array, from: number, to: number): { deepest: number; least: number } {
    let deep = from
    let out = from
    let deepest = wheel[from]!
    let least = deepest
    for (let at = from + 1; at < to; at++) {
      const value = wheel[at]!
      if (value > deepest) {
        deepest = value
        deep = at
      } else if (value < least) {
        least = value
        out = at
      }
    }
    if (deepest > this.#deepest.mm) this.#deepest = { mm: deepest, atS: times[deep]! }
    if (least < this.#least.mm) this.#least = { mm: least, atS: times[out]! }
    return { deepest, least }
  }

  /** Every position at the wheel and how often it was met, rising. */
  #atWheel(): Counts {
    const counts = this.#counted.counts()
    const { toWheel } = this.channel
    return toWheel ? { ...counts, values: counts.values.map((value) => toWheel.at(value)) } : counts
  }

  /** `undefined` where there is no sample. */
  summary({ percentiles: wanted, positionBinMm, positionBinPct }: LogOptions): PositionStatistics | undefined {
    if (!Number.isFinite(this.#deepest.mm)) return undefined
    const { travelMm } = this.channel
    const counts = this.#atWheel()
    const named = (values: readonly number[]) => Object.fromEntries(wanted.map((percent, at) => [`p${percent}`, values[at]!]))
    const [median, ...found] = percentiles(counts, [50, ...wanted])
    const meanMm = meanOf(counts)
    const pct = (mm: number) => (100 * mm) / travelMm!
    return {
      samples: countOf(counts), exact: this.#counted.exact, resolutionMm: this.#counted.step, percentileMethod: 'linear',
      percentilesMm: named(found), medianMm: median!, meanMm,
      deepestMm: this.#deepest.mm, deepestAtS: this.#deepest.atS, leastMm: this.#least.mm, leastAtS: this.#least.atS,
      histogramMm: histogram(counts, positionBinMm),
      ...(travelMm === undefined ? {} : {
        percentilesPct: named(found.map(pct)), medianPct: pct(median!), meanPct: pct(meanMm), deepestPct: pct(this.#deepest.mm),
        histogramPct: histogram({ ...counts, values: counts.values.map(pct) }, positionBinPct),
      }),
    }
  }
}
