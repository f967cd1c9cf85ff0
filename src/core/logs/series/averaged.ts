import type { EvenBlock } from './evenSamples'

const room = 4096

/**
 * Samples averaged in groups of `by`, for what is slow enough to need no more: attitude, braking, spectrum. A group at the
 * end of a stretch that is not full is left out. With `by` 1 the blocks go on as they are.
 */
export class Averaged {
  readonly #by: number
  readonly #emit: (block: EvenBlock) => void
  readonly #times = new Float64Array(room)
  readonly #out: Float64Array[]
  /** Of the group that is not full: the times, then the channels. */
  readonly #sums: Float64Array
  #inGroup = 0
  #count = 0
  #fresh = true
  #holes = false

  constructor(by: number, channels: number, emit: (block: EvenBlock) => void) {
    this.#by = by
    this.#emit = emit
    this.#out = Array.from({ length: channels }, () => new Float64Array(room))
    this.#sums = new Float64Array(channels + 1)
  }

  push(block: EvenBlock): void {
    if (this.#by === 1) {
      this.#emit(block)
      return
    }
    if (block.fresh) this.#restart()
    this.#holes ||= block.holes
    const { count, times, channels } = block
    this.#average(times, count, this.#times, 0)
    channels.forEach((values, channel) => this.#average(values, count, this.#out[channel]!, channel + 1))
    const all = this.#inGroup + count
    this.#count += Math.floor(all / this.#by)
    this.#inGroup = all % this.#by
    if (this.#count > room / 2) this.finish()
  }

  /** From where the last block ended; that is moved on when all columns are done. */
  #average(values: Float64Array, count: number, into: Float64Array, column: number): void {
    const by = this.#by
    let out = this.#count
    let missing = by - this.#inGroup
    let sum = this.#sums[column]!
    for (let at = 0; at < count;) {
      const end = Math.min(count, at + missing)
      missing -= end - at
      for (; at < end; at++) sum += values[at]!
      if (missing > 0) break
      into[out++] = sum / by
      sum = 0
      missing = by
    }
    this.#sums[column] = sum
  }

  #restart(): void {
    this.finish()
    this.#fresh = true
    this.#inGroup = 0
    this.#sums.fill(0)
  }

  finish(): void {
    if (this.#count === 0) return
    const count = this.#count
    this.#count = 0
    this.#emit({ count, times: this.#times, channels: this.#out, fresh: this.#fresh, holes: this.#holes })
    this.#fresh = false
  }
}
