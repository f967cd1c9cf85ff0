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
  readonly #sums: Float64Array
  #timeSum = 0
  #inGroup = 0
  #count = 0
  #fresh = true
  #holes = false

  constructor(by: number, channels: number, emit: (block: EvenBlock) => void) {
    this.#by = by
    this.#emit = emit
    this.#out = Array.from({ length: channels }, () => new Float64Array(room))
    this.#sums = new Float64Array(channels)
  }

  push(block: EvenBlock): void {
    if (this.#by === 1) {
      this.#emit(block)
      return
    }
    if (block.fresh) this.#restart()
    this.#holes ||= block.holes
    const { count, times, channels } = block
    let inGroup = this.#inGroup
    let out = this.#count
    let timeSum = this.#timeSum
    const begunWith = { inGroup, out }
    for (let at = 0; at < count; at++) {
      timeSum += times[at]!
      if (++inGroup < this.#by) continue
      this.#times[out++] = timeSum / this.#by
      timeSum = 0
      inGroup = 0
    }
    channels.forEach((values, channel) => this.#average(values, count, channel, begunWith))
    this.#inGroup = inGroup
    this.#count = out
    this.#timeSum = timeSum
    if (out > room / 2) this.finish()
  }

  #average(values: Float64Array, count: number, channel: number, begun: { inGroup: number; out: number }): void {
    const [by, into] = [this.#by, this.#out[channel]!]
    let { inGroup, out } = begun
    let sum = this.#sums[channel]!
    for (let at = 0; at < count; at++) {
      sum += values[at]!
      if (++inGroup < by) continue
      into[out++] = sum / by
      sum = 0
      inGroup = 0
    }
    this.#sums[channel] = sum
  }

  #restart(): void {
    this.finish()
    this.#fresh = true
    this.#inGroup = 0
    this.#timeSum = 0
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
