/** What a time column needs to become seconds since the first row. */
export interface TimeFacts {
  perS: number
  /** A time of day, which begins anew at midnight. */
  clock: boolean
}

const day = 86_400

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
    let last = this.#last
    for (let row = 0; row < rows; row++) {
      let time = (times[row]! - origin) * perS
      if (clock) time += this.#days * day
      if (time < last) {
        if (clock && last - time > day / 2) {
          this.midnights++
          this.#days++
          time += day
        } else if (this.backwardsRow < 0) this.backwardsRow = row
      }
      times[row] = time
      if (!Number.isNaN(time)) last = time
    }
    this.#last = last
  }
}
