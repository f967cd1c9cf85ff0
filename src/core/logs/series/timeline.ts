/** What a time column needs to become seconds since the first row. */
export interface TimeFacts {
  perS: number
  /** A time of day, which begins anew at midnight. */
  clock: boolean
}

const day = 86_400
/** A time further away than three centuries is a glitch. */
const longestS = 1e10

/** Turns a time column into seconds since the first row of the log, in place. */
export class Timeline {
  #origin = NaN
  #last = NaN
  #days = 0
  /** How often a clock passed midnight. */
  midnights = 0
  /** The first row in which time runs backwards. */
  backwardsRow = -1

  constructor(readonly facts: TimeFacts) {}

  /** NaN stays NaN. `backwardsRow` is the row of this call, or -1. */
  convert(times: Float64Array, rows: number): void {
    const { perS, clock } = this.facts
    this.backwardsRow = -1
    if (Number.isNaN(this.#origin)) this.#origin = times.subarray(0, rows).find((time) => !Number.isNaN(time)) ?? NaN
    const origin = this.#origin
    // Seconds since 1970 leave a double no more than a quarter of a microsecond; what is beyond are the last bits of it.
    const rounded = clock || Math.abs(origin * perS) > 1e7
    let last = this.#last
    for (let row = 0; row < rows; row++) {
      let time = (times[row]! - origin) * perS
      if (rounded) time = Math.round(time * 1e6) / 1e6
      if (clock) time += this.#days * day
      if (time < last) {
        if (clock && last - time > day / 2) {
          this.midnights++
          this.#days++
          time += day
        } else if (this.backwardsRow < 0) this.backwardsRow = row
      }
      if (time <= longestS && time >= -longestS) {
        times[row] = time
        last = time
      } else times[row] = NaN
    }
    this.#last = last
  }
}
