/** The whole of a log in so many pieces of equal length: how far in and how far out an end was in each; NaN where nothing is known. */
export interface LogTrace {
  fromS: number
  stepS: number
  leastMm: Float32Array
  mostMm: Float32Array
}

/** A time that falls short of its piece by its last bits. */
const rounding = 1e-6

/**
 * Gathers least and most of pieces of time, in memory that does not grow with the log: whenever it outgrows its pieces,
 * two become one. No peak is lost by that.
 */
export class Trace {
  readonly #least: Float32Array
  readonly #most: Float32Array
  #from = NaN
  #perS: number
  #used = 0

  /** `pieces` is even, and at least half of them are used by a log that has as many samples. */
  constructor(readonly pieces: number, spacingS: number) {
    this.#least = new Float32Array(pieces).fill(NaN)
    this.#most = new Float32Array(pieces).fill(NaN)
    this.#perS = 1 / spacingS
  }

  /** Samples of one stretch, without a hole; times that run backwards fall into the pieces that are there. */
  add(times: Float64Array, values: Float64Array, from: number, to: number): void {
    if (from >= to) return
    if (Number.isNaN(this.#from)) this.#from = times[from]!
    while ((times[to - 1]! - this.#from) * this.#perS + rounding >= this.pieces) this.#halve()
    const [least, most, start, perS] = [this.#least, this.#most, this.#from, this.#perS]
    for (let at = from; at < to; at++) {
      const piece = Math.floor((times[at]! - start) * perS + rounding)
      const value = values[at]!
      // NaN is neither above nor below.
      if (!(value >= least[piece]!)) least[piece] = value
      if (!(value <= most[piece]!)) most[piece] = value
    }
    this.#used = Math.max(this.#used, Math.floor((times[to - 1]! - start) * perS + rounding) + 1)
  }

  #halve(): void {
    for (const [held, pick] of [[this.#least, Math.min], [this.#most, Math.max]] as const) {
      for (let at = 0; at < this.pieces / 2; at++) {
        const [a, b] = [held[2 * at]!, held[2 * at + 1]!]
        held[at] = Number.isNaN(a) ? b : Number.isNaN(b) ? a : pick(a, b)
      }
      held.fill(NaN, this.pieces / 2)
    }
    this.#perS /= 2
    this.#used = Math.ceil(this.#used / 2)
  }

  summary(): LogTrace | undefined {
    if (Number.isNaN(this.#from)) return undefined
    const used = Math.min(this.pieces, this.#used)
    return { fromS: this.#from, stepS: 1 / this.#perS, leastMm: this.#least.slice(0, used), mostMm: this.#most.slice(0, used) }
  }
}
