import type { Counts } from './percentiles'

/** How many steps of the grid are counted one by one, at most. */
const mostSteps = 1 << 19
/** Values off the grid by less than this share of a step are rounding of their last bit. */
const rounding = 1e-6

/** Where values are expected, and the size of one unit of the sensor, both in mm. */
export interface Expected {
  from: number
  to: number
  unit?: number
}

/**
 * Counts values so that percentiles can be had without keeping them. The grid begins at whole units of the sensor and is
 * made ten times finer whenever a value does not lie on it, as long as that stays within memory; so decimals as a logger
 * writes them are counted exactly. Otherwise each value counts at the nearest step, and `exact` is false.
 *
 * Values outside of what is expected count as one at either end, so that a glitch does not make the grid coarse.
 */
export class CountedValues {
  readonly #unit: number
  readonly #expected: Expected
  #perUnit = 1
  /** The step that the first count stands for. */
  #first: number
  #counts: Uint32Array
  /** All values lay on the grid. */
  exact = true
  #below = 0
  #above = 0
  #least = Infinity
  #most = -Infinity

  constructor(expected: Expected) {
    this.#expected = expected
    this.#unit = expected.unit ?? 1
    while (this.#stepsAt(this.#perUnit) > mostSteps) this.#perUnit /= 10
    this.#first = this.#firstAt(this.#perUnit)
    this.#counts = new Uint32Array(this.#stepsAt(this.#perUnit))
  }

  /** The width of a step: a value told by this is off by no more than half of it. */
  get step(): number {
    return this.#unit / this.#perUnit
  }

  /** How many values are outside of what was expected. */
  get outside(): number {
    return this.#below + this.#above
  }

  /** NaN is passed over. */
  add(values: Float64Array, from: number, to: number): void {
    let at = from
    while (at < to) {
      at = this.#onGrid(values, at, to)
      if (at < to && !this.#offGrid(values[at]!)) at++
    }
  }

  /** Counts values that lie on the grid; returns the place of the first that does not. */
  #onGrid(values: Float64Array, from: number, to: number): number {
    const counts = this.#counts
    const scale = this.#perUnit / this.#unit
    const shift = 0.5 - this.#first
    const tolerance = this.exact ? rounding : 1
    for (let at = from; at < to; at++) {
      const place = values[at]! * scale + shift
      const step = place | 0
      // Written so that NaN is off the grid as well, and so is what is too large for a whole number.
      if (!(Math.abs(place - step - 0.5) <= tolerance && place >= 0 && step < counts.length)) return at
      counts[step] = (counts[step]! + 1) | 0
    }
    return to
  }

  /** True where the grid was changed for this value, which then is to be counted once more. */
  #offGrid(value: number): boolean {
    // The very sum of `#onGrid`: told apart by a last bit, the two would go on for ever.
    const place = value * (this.#perUnit / this.#unit) + (0.5 - this.#first)
    if (place >= 0 && place < this.#counts.length) {
      this.#refine()
      return true
    }
    this.#beyond(value)
    return false
  }

  #stepsAt(perUnit: number): number {
    return Math.ceil(((this.#expected.to - this.#expected.from) / this.#unit) * perUnit) + 2
  }

  #firstAt(perUnit: number): number {
    return Math.floor((this.#expected.from / this.#unit) * perUnit)
  }

  #refine(): void {
    const finer = this.#perUnit * 10
    if (this.#stepsAt(finer) > mostSteps) {
      this.exact = false
      return
    }
    const [old, oldFirst] = [this.#counts, this.#first]
    this.#perUnit = finer
    this.#first = this.#firstAt(finer)
    this.#counts = new Uint32Array(this.#stepsAt(finer))
    for (let step = 0; step < old.length; step++) if (old[step]! > 0) this.#counts[(oldFirst + step) * 10 - this.#first] = old[step]!
  }

  #beyond(value: number): void {
    if (Number.isNaN(value)) return
    if (value < this.#expected.from) this.#below++
    else this.#above++
    this.#least = Math.min(this.#least, value)
    this.#most = Math.max(this.#most, value)
  }

  /** Every value that was met and how often, rising; those outside of what was expected as one at either end. */
  counts(): Counts {
    const counts = this.#counts
    let met = 0
    for (let step = 0; step < counts.length; step++) if (counts[step]! > 0) met++
    const begin = this.#below > 0 ? 1 : 0
    const length = begin + met + (this.#above > 0 ? 1 : 0)
    const [values, times] = [new Float64Array(length), new Float64Array(length)]
    if (this.#below > 0) [values[0], times[0]] = [this.#least, this.#below]
    let into = begin
    for (let step = 0; step < counts.length; step++) {
      if (counts[step]! === 0) continue
      values[into] = ((this.#first + step) / this.#perUnit) * this.#unit
      times[into++] = counts[step]!
    }
    if (this.#above > 0) [values[into], times[into]] = [this.#most, this.#above]
    return { values, times }
  }
}
