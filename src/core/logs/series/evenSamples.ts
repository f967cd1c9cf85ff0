import { gapSpacings, type Spacing } from './spacing'

/** Evenly spaced samples of several channels. The arrays are used again. */
export interface EvenBlock {
  count: number
  times: Float64Array
  channels: readonly Float64Array[]
  /** True where these samples do not follow on the ones before: a gap lies between, or nothing came before. */
  fresh: boolean
  /** Whether any sample may be missing. */
  holes: boolean
}

/** Whether a channel is drawn straight between two samples or holds the one before, such as a lap's number. */
export type Between = 'straight' | 'hold'

const room = 4096

/**
 * Puts samples at even times. Those that come at their time (within the spacing's tolerance) are passed on as they are;
 * where one is missing or late the channels are drawn straight between their neighbours, and counted. Across a gap, and
 * where time runs backwards, nothing is drawn: a fresh stretch begins.
 */
export class EvenSamples {
  interpolated = 0
  gaps = 0
  gapS = 0
  backwards = 0
  repeated = 0
  readonly #spacing: Spacing
  readonly #kinds: readonly Between[]
  readonly #emit: (block: EvenBlock) => void
  readonly #times = new Float64Array(room)
  readonly #out: Float64Array[]
  readonly #last: Float64Array
  #lastTime = NaN
  #nextTime = NaN
  #count = 0
  #fresh = true
  /** Set with the first hole: what is drawn later may reach back to it. */
  #holes = false

  constructor(spacing: Spacing, kinds: readonly Between[], emit: (block: EvenBlock) => void) {
    this.#spacing = spacing
    this.#kinds = kinds
    this.#emit = emit
    this.#out = kinds.map(() => new Float64Array(room))
    this.#last = new Float64Array(kinds.length)
  }

  /** The next rows, times in s; at most as many as a block of the reader holds. `holes` says that some may be missing. */
  push(times: Float64Array, channels: readonly Float64Array[], count: number, holes: boolean): void {
    if (count === 0) return
    this.#holes ||= holes
    if (this.#isEven(times, count)) this.#pass(times, channels, count)
    else for (let row = 0; row < count; row++) this.#row(times[row]!, channels, row)
  }

  finish(): void {
    this.#flush()
  }

  #isEven(times: Float64Array, count: number): boolean {
    const { s, toleranceS } = this.#spacing
    let before = this.#lastTime
    if (Number.isNaN(before)) before = times[0]! - s
    else if (Math.abs(this.#nextTime - before - s) > 1e-9) return false
    for (let row = 0; row < count; row++) {
      const off = times[row]! - before - s
      if (!(off <= toleranceS && off >= -toleranceS)) return false
      before = times[row]!
    }
    return true
  }

  /** What is even already goes on without being copied. */
  #pass(times: Float64Array, channels: readonly Float64Array[], count: number): void {
    this.#flush()
    this.#emit({ count, times, channels, fresh: this.#fresh, holes: this.#holes })
    this.#fresh = false
    this.#remember(times[count - 1]!, channels, count - 1)
    this.#nextTime = this.#lastTime + this.#spacing.s
  }

  #row(time: number, channels: readonly Float64Array[], row: number): void {
    const { s, toleranceS } = this.#spacing
    const step = time - this.#lastTime
    if (step === 0) {
      this.repeated++
      return
    }
    if (!(step > 0 && step <= gapSpacings * s)) this.#breakAt(time, step)
    else while (this.#nextTime < time - toleranceS) this.#between(time, channels, row)
    if (time >= this.#nextTime - toleranceS) {
      this.#place(time, (channel) => channels[channel]![row]!)
      this.#nextTime = time + s
    }
    this.#remember(time, channels, row)
  }

  #breakAt(time: number, step: number): void {
    if (step < 0) this.backwards++
    else if (step > 0) {
      this.gaps++
      this.gapS += step
    }
    this.#flush()
    this.#fresh = true
    this.#nextTime = time
  }

  /** One sample at its even time, drawn between the row before and this one. */
  #between(time: number, channels: readonly Float64Array[], row: number): void {
    const at = this.#nextTime
    const share = (at - this.#lastTime) / (time - this.#lastTime)
    this.interpolated++
    this.#place(at, (channel) => {
      const before = this.#last[channel]!
      return this.#kinds[channel] === 'hold' ? before : before + share * (channels[channel]![row]! - before)
    })
    this.#nextTime = at + this.#spacing.s
  }

  #place(time: number, value: (channel: number) => number): void {
    if (this.#count === room) this.#flush()
    this.#times[this.#count] = time
    for (let channel = 0; channel < this.#out.length; channel++) this.#out[channel]![this.#count] = value(channel)
    this.#count++
  }

  #remember(time: number, channels: readonly Float64Array[], row: number): void {
    this.#lastTime = time
    for (let channel = 0; channel < this.#last.length; channel++) this.#last[channel] = channels[channel]![row]!
  }

  #flush(): void {
    if (this.#count === 0) return
    const count = this.#count
    this.#count = 0
    this.#emit({ count, times: this.#times, channels: this.#out, fresh: this.#fresh, holes: this.#holes })
    this.#fresh = false
  }
}
