/** What counts as being on a stop, mm from the end of the travel, and how far away from there it has to get to be off it. */
export interface StopLimits {
  withinMm: number
  leaveMm: number
}

/** Once on a stop, from its first sample there to its last. */
export interface StopPlace {
  atS: number
  forS: number
  /** The place furthest into the stop, mm from full extension. */
  extremeMm: number
}

export interface StopStatistics extends StopLimits {
  times: number
  totalS: number
  /** The first ones; `times` counts them all. */
  places: StopPlace[]
}

const mostPlaces = 500

/**
 * Counts how often an end is on a stop: it comes within a limit of the end of its travel, and counts again only after it
 * was `leaveMm` further away than that. `sign` 1 is the stop at full compression, -1 the one at full extension.
 */
export class Stops {
  times = 0
  #totalS = 0
  readonly #places: StopPlace[] = []
  #on = false
  #now: StopPlace = { atS: 0, forS: 0, extremeMm: 0 }
  readonly #enter: number
  readonly #leave: number

  constructor(readonly limits: StopLimits, readonly sign: 1 | -1, endMm: number) {
    this.#enter = sign * endMm - limits.withinMm
    this.#leave = this.#enter - limits.leaveMm
  }

  /** The next samples, of which `extreme` is the one nearest the stop: most of the time there is nothing to do. */
  add(times: Float64Array, values: Float64Array, { from, to, extreme }: { from: number; to: number; extreme: number }): void {
    if (!this.#on && this.sign * extreme < this.#enter) return
    for (let at = from; at < to; at++) {
      const depth = this.sign * values[at]!
      if (this.#on) {
        if (depth < this.#leave) this.finish()
        else this.#stay(times[at]!, values[at]!)
      } else if (depth >= this.#enter) {
        this.#on = true
        this.#now = { atS: times[at]!, forS: 0, extremeMm: values[at]! }
      }
    }
  }

  /** Samples nearer the middle of the travel than this place need not be given: they change nothing. While on the stop there is no such place. */
  get from(): number {
    return this.#on ? -this.sign * Infinity : this.sign * this.#enter
  }

  #stay(time: number, value: number): void {
    // Time on the stop ends with the last sample within the limit, not when it is far enough away again.
    if (this.sign * value >= this.#enter) this.#now.forS = time - this.#now.atS
    if (this.sign * value > this.sign * this.#now.extremeMm) this.#now.extremeMm = value
  }

  /** Ends a stay, at a gap or at the end of the log. */
  finish(): void {
    if (!this.#on) return
    this.#on = false
    this.times++
    this.#totalS += this.#now.forS
    if (this.#places.length < mostPlaces) this.#places.push(this.#now)
  }

  summary(): StopStatistics {
    return { ...this.limits, times: this.times, totalS: this.#totalS, places: this.#places }
  }
}
