/** The front against the rear, in % of their travels. */
export interface FrontRearStatistics {
  samples: number
  /** 1 where both go in together, -1 where one goes in as the other comes out. */
  correlation: number
  /** How much further into its travel the front is, on average. */
  frontAheadPct: number
  /** Shares of the samples in % by front (rows, from extended) and rear (columns), in squares of `binPct`. */
  binPct: number
  sharesPct: number[][]
}

const bins = 20
const middle = 50

/** Gathers pairs of positions as they come. */
export class FrontRear {
  readonly #counts = new Float64Array(bins * bins)
  #n = 0
  #sums = { front: 0, rear: 0, frontSquares: 0, rearSquares: 0, products: 0 }

  constructor(readonly travelMm: readonly [front: number, rear: number]) {}

  add(front: Float64Array, rear: Float64Array, count: number): void {
    const perFront = 100 / this.travelMm[0]
    const perRear = 100 / this.travelMm[1]
    const counts = this.#counts
    let n = 0
    let sumA = 0
    let sumB = 0
    let squaresA = 0
    let squaresB = 0
    let products = 0
    for (let at = 0; at < count; at++) {
      // About the middle of the travel the squares stay small, and their sums lose nothing over long logs.
      const a = front[at]! * perFront - middle
      const b = rear[at]! * perRear - middle
      if (Number.isNaN(a + b)) continue
      n++
      sumA += a
      sumB += b
      squaresA += a * a
      squaresB += b * b
      products += a * b
      counts[binOf(a + middle) * bins + binOf(b + middle)]!++
    }
    this.#n += n
    this.#sums.front += sumA
    this.#sums.rear += sumB
    this.#sums.frontSquares += squaresA
    this.#sums.rearSquares += squaresB
    this.#sums.products += products
  }

  summary(): FrontRearStatistics | undefined {
    if (this.#n === 0) return undefined
    const n = this.#n
    const { front, rear, frontSquares, rearSquares, products } = this.#sums
    const both = Math.sqrt(Math.max(0, frontSquares - (front * front) / n) * Math.max(0, rearSquares - (rear * rear) / n))
    return {
      samples: n, correlation: both > 0 ? (products - (front * rear) / n) / both : 0, frontAheadPct: (front - rear) / n, binPct: 100 / bins,
      sharesPct: Array.from({ length: bins }, (_, row) => Array.from(this.#counts.subarray(row * bins, (row + 1) * bins), (times) => (100 * times) / n)),
    }
  }
}

/** What is beyond either end of the travel counts at that end. */
function binOf(percent: number): number {
  return Math.max(0, Math.min(bins - 1, Math.floor((percent * bins) / 100)))
}
