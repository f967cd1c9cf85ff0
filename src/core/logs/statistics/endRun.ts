import type { Channel } from '../mapping/resolveMapping'
import type { LogOptions } from '../options'
import type { EvenBlock } from '../series/evenSamples'
import type { Fit } from '../series/savitzkyGolay'
import { Velocity } from '../series/velocity'
import type { EndStatistics } from './logStatistics'
import { Positions } from './positions'
import { Speeds } from './speeds'
import { Stops } from './stops'
import { Trace } from './trace'

const room = 4096

/** One end over one stretch of the log: all that needs every sample. */
export class EndRun {
  readonly #positions: Positions
  readonly #speeds = new Speeds()
  readonly #velocity: Velocity
  readonly #stops: Stops[]
  readonly #trace: Trace | undefined
  readonly #wheel = new Float64Array(room)
  /** Samples beyond the leverage table. */
  beyondTable = 0
  missing = 0

  constructor(readonly channel: Channel, readonly options: LogOptions, fit: Fit, spacingS: number) {
    this.#positions = new Positions(channel)
    this.#velocity = new Velocity(fit, spacingS, (values, count) => this.#speeds.add(values, count))
    this.#trace = options.tracePieces > 0 ? new Trace(options.tracePieces, spacingS) : undefined
    const { travelMm } = channel
    this.#stops = travelMm === undefined ? [] : [new Stops(options.bottoming, 1, travelMm), new Stops(options.topping, -1, 0)]
  }

  /** Samples `from` up to and without `to` of the block, the sensor's mm in `values`; `whole` says that none is missing. */
  add(block: EvenBlock, values: Float64Array, { from, to, whole }: { from: number; to: number; whole: boolean }): void {
    if (block.fresh && from === 0) this.#break()
    this.#positions.count(values, from, to)
    const wheel = this.#toWheel(values, block.count)
    if (whole) this.#stretch(block.times, wheel, from, to)
    else this.#stretches(block.times, wheel, from, to)
  }

  #toWheel(values: Float64Array, count: number): Float64Array {
    const { toWheel } = this.channel
    if (!toWheel) return values
    this.beyondTable += toWheel.all(values, this.#wheel, count)
    return this.#wheel
  }

  /** Runs of samples between those that are missing. */
  #stretches(times: Float64Array, wheel: Float64Array, from: number, to: number): void {
    for (let at = from; at < to;) {
      let end = at
      while (end < to && !Number.isNaN(wheel[end]!)) end++
      if (end > at) this.#stretch(times, wheel, at, end)
      if (end < to) {
        this.missing++
        this.#break()
      }
      at = end + 1
    }
  }

  #stretch(times: Float64Array, wheel: Float64Array, from: number, to: number): void {
    if (!this.#isInside(wheel, from, to)) {
      const { deepest, least } = this.#positions.extremes(times, wheel, from, to)
      for (const stop of this.#stops) stop.add(times, wheel, { from, to, extreme: stop.sign > 0 ? deepest : least })
    }
    this.#velocity.push(wheel, from, to)
    this.#trace?.add(times, wheel, from, to)
  }

  /** Nothing is further than all that came before, and nothing near a stop: most of the time it is so, and quickly seen. */
  #isInside(wheel: Float64Array, from: number, to: number): boolean {
    let { deepest: high, least: low } = this.#positions.furthest
    for (const stop of this.#stops) {
      if (stop.sign > 0) high = Math.min(high, stop.from)
      else low = Math.max(low, stop.from)
    }
    const middle = (high + low) / 2
    // A little less, for what lies on the limit to the last bit is looked at closely; before the first samples it is no number.
    const reach = (high - low) / 2 - 1e-9 * (Math.abs(high) + Math.abs(low))
    let at = from
    // Four at a time, which a loop of one is not made into.
    for (; at + 3 < to; at += 4) {
      if (!(Math.abs(wheel[at]! - middle) < reach && Math.abs(wheel[at + 1]! - middle) < reach && Math.abs(wheel[at + 2]! - middle) < reach && Math.abs(wheel[at + 3]! - middle) < reach)) return false
    }
    for (; at < to; at++) if (!(Math.abs(wheel[at]! - middle) < reach)) return false
    return true
  }

  #break(): void {
    this.#velocity.finish()
    for (const stop of this.#stops) stop.finish()
  }

  /** Ends the stretch. `undefined` where there was no sample. */
  finish(): EndStatistics | undefined {
    this.#break()
    const position = this.#positions.summary(this.options)
    if (!position) return undefined
    const { travelMm, name } = this.channel
    const { speedLimits, speedBinMmPerS, speedToMmPerS } = this.options
    const velocity = this.#speeds.summary({ limits: speedLimits, binMmPerS: speedBinMmPerS, toMmPerS: speedToMmPerS })
    const trace = this.#trace?.summary()
    const [bottoming, topping] = this.#stops.map((stop) => stop.summary())
    return {
      column: name, position, ...(travelMm === undefined ? {} : { travelMm }), ...(velocity ? { velocity } : {}),
      ...(bottoming && topping ? { bottoming, topping } : {}), ...(trace ? { trace } : {}),
    }
  }

  /** Samples that belong to a stretch too short for a velocity. */
  get withoutVelocity(): number {
    return this.#velocity.without
  }
}
