/** Takes the places where a movement turned. */
export type TakeTurn = (timeS: number, mm: number) => void

/**
 * The turning points of a movement: its highest and lowest places in turn, each told once the movement has come back by
 * more than `swingMm`, so that noise does not count. The place it was let go from is the first of them.
 */
export class TurningPoints {
  /** 1 on the way up, -1 on the way down, 0 as long as it has not moved by a swing. */
  #direction = 0
  /** The highest place and its time, the lowest and its time; an array of doubles keeps them out of the heap. */
  readonly #kept = new Float64Array(4).fill(NaN)

  constructor(readonly swingMm: number, readonly take: TakeTurn) {}

  /** Samples of one stretch, without a hole. */
  add(times: Float64Array, values: Float64Array, from: number, to: number): void {
    const { swingMm } = this
    let direction = this.#direction
    const kept = this.#kept
    let high = kept[0]!
    let highAt = kept[1]!
    let low = kept[2]!
    let lowAt = kept[3]!
    for (let at = from; at < to; at++) {
      const value = values[at]!
      if (!(value <= high)) {
        high = value
        highAt = times[at]!
      }
      if (!(value >= low)) {
        low = value
        lowAt = times[at]!
      }
      if (direction >= 0 && high - value > swingMm) {
        this.take(highAt, high)
        direction = -1
        low = value
        lowAt = times[at]!
      } else if (direction <= 0 && value - low > swingMm) {
        this.take(lowAt, low)
        direction = 1
        high = value
        highAt = times[at]!
      }
    }
    this.#direction = direction
    kept[0] = high
    kept[1] = highAt
    kept[2] = low
    kept[3] = lowAt
  }

  /** A gap: what comes has nothing to do with what was. */
  restart(): void {
    this.#direction = 0
    this.#kept.fill(NaN)
  }
}
