import { savitzkyGolay, type Fit } from './savitzkyGolay'

/** Takes velocities as they become known, each belonging to the sample `lag` before the newest one pushed. */
export type TakeVelocities = (velocities: Float64Array, count: number) => void

/** Values pushed at once may be as many as this. */
const mostAtOnce = 4096

/**
 * The slope of evenly spaced samples as they come, by Savitzky-Golay. The first and last samples of a stretch take their
 * slope from the polynomial through the first and last points (scipy's mode `interp`); a stretch of fewer samples than the
 * fit has points has no velocity.
 */
export class Velocity {
  readonly #points: number
  readonly #half: number
  readonly #fit: Fit
  readonly #perS: number
  /** The weights of the samples behind the middle; those before it are the same with the sign turned. */
  readonly #weights: Float64Array
  readonly #work: Float64Array
  readonly #found: Float64Array
  readonly #take: TakeVelocities
  #held = 0
  #begun = false
  /** Samples that got no velocity, because their stretch was too short. */
  without = 0

  constructor(fit: Fit, spacingS: number, take: TakeVelocities) {
    this.#points = fit.points
    this.#half = (fit.points - 1) / 2
    this.#fit = fit
    this.#perS = 1 / spacingS
    this.#take = take
    this.#weights = savitzkyGolay(fit, 1).slice(this.#half).map((weight) => weight * this.#perS)
    this.#work = new Float64Array(fit.points + mostAtOnce)
    this.#found = new Float64Array(fit.points + mostAtOnce)
  }

  /** The next samples of the stretch, `from` up to and without `to`. */
  push(values: Float64Array, from: number, to: number): void {
    for (let at = from; at < to; at += mostAtOnce) this.#some(values, at, Math.min(to, at + mostAtOnce))
  }

  #some(values: Float64Array, from: number, to: number): void {
    const [work, held, half] = [this.#work, this.#held, this.#half]
    work.set(values.subarray(from, to), held)
    const total = held + to - from
    this.#held = total
    if (total < this.#points) return
    let count = 0
    if (!this.#begun) for (let at = 0; at < half; at++) this.#found[count++] = this.#edge(at, 0)
    count = this.#middle(this.#begun ? half + 1 : half, total - half, count)
    this.#begun = true
    work.copyWithin(0, total - this.#points, total)
    this.#held = this.#points
    this.#take(this.#found, count)
  }

  #middle(from: number, to: number, count: number): number {
    if (this.#fit.order <= 2 && this.#half > 2) return this.#straight(from, to, count)
    const [work, found, weights, half] = [this.#work, this.#found, this.#weights, this.#half]
    for (let at = from; at < to; at++) {
      let slope = 0
      for (let step = 1; step <= half; step++) slope += weights[step]! * (work[at + step]! - work[at - step]!)
      found[count++] = slope
    }
    return count
  }

  /**
   * The same for orders 1 and 2, whose weights rise evenly: two running sums instead of a sum over all points. They begin
   * anew with every block, so that the rounding of their last bits cannot add up.
   */
  #straight(from: number, to: number, count: number): number {
    const [work, found, half] = [this.#work, this.#found, this.#half]
    const unit = this.#weights[1]!
    let sum = 0
    let moment = 0
    for (let step = -half; step <= half; step++) {
      sum += work[from + step]!
      moment += step * work[from + step]!
    }
    for (let at = from; at < to; at++) {
      found[count++] = moment * unit
      const first = work[at - half]!
      const next = work[at + half + 1]!
      moment += (half + 1) * first + half * next - sum
      sum += next - first
    }
    return count
  }

  /** The slope at a sample of the points that begin at `from`, where it is not in their middle. */
  #edge(at: number, from: number): number {
    return savitzkyGolay(this.#fit, 1, at).reduce((sum, weight, step) => sum + weight * this.#work[from + step]!, 0) * this.#perS
  }

  /** Ends the stretch; the next samples pushed begin another. */
  finish(): void {
    if (this.#begun) {
      for (let at = 0; at < this.#half; at++) this.#found[at] = this.#edge(this.#half + 1 + at, 0)
      this.#take(this.#found, this.#half)
    } else this.without += this.#held
    this.#held = 0
    this.#begun = false
  }
}
