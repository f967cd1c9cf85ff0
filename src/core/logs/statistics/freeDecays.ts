import { phrase } from '../../words/say'
import { decrement, ratioFromDecrement } from '../../compute/bounce/dampingRatio'

/** One free swinging out after a push or a bump. */
export interface Decay {
  atS: number
  swings: number
  dampingRatio: number
  dampedHz: number
  naturalHz: number
}

export interface DecayStatistics {
  count: number
  /** Medians over all that were found. */
  dampingRatio: number
  naturalHz: number
  /** The middle half of the ratios lies between these. */
  dampingRatioFrom: number
  dampingRatioTo: number
  found: Decay[]
}

/** What counts as swinging freely. Our own choice; told in `decayRules`. */
const rules = { fewestSwings: 3, shrink: 0.8, halfPeriodS: [0.05, 0.8], evenness: 0.25, steadiness: 2 } as const

export const decayRules = phrase('three or more swings running, each at least a fifth smaller than the one before, of even length (within 25 %) and shrinking evenly (decrements within a factor of 2), between 0.6 and 10 Hz')

const mostKept = 500

/**
 * Finds free decays among turning points: natural frequency and damping without a test stand.
 *
 * From swing to swing the height shrinks by the same share in a free decay; so does the difference of successive turning
 * points, and that needs no place of rest. Ratio by the logarithmic decrement of half cycles, frequency from the time the
 * swings took: fd = swings / (2 · time), fn = fd / √(1 − ratio²). The road goes on pushing: on a ride these are estimates,
 * the fewer the weaker; after a bounce at a standstill they are the bounce test.
 * Source: S. S. Rao, Mechanical Vibrations (logarithmic decrement).
 */
export class FreeDecays {
  readonly #found: Decay[] = []
  #count = 0
  /** The turns of the run so far, a time and a place each, in an array that grows: on a ride there are thousands of runs a minute. */
  #turns = new Float64Array(64)
  #held = 0
  /** The newest swing, then the shortest and the longest half and the least and the greatest step of the run. */
  readonly #now = Float64Array.of(0, Infinity, 0, Infinity, 0)

  turn(time: number, mm: number): void {
    if (2 * this.#held === this.#turns.length) {
      const more = new Float64Array(4 * this.#held)
      more.set(this.#turns)
      this.#turns = more
    }
    const turns = this.#turns
    const at = 2 * this.#held++
    turns[at] = time
    turns[at + 1] = mm
    if (at === 0) return
    const swing = Math.abs(mm - turns[at - 1]!)
    if (!this.#belongs(swing, time - turns[at - 2]!)) this.#close()
    this.#now[0] = swing
  }

  /** Whether the newest swing belongs to the decay of those before; takes it up if so. */
  #belongs(swing: number, half: number): boolean {
    const now = this.#now
    const leastHalf = Math.min(now[1]!, half)
    const mostHalf = Math.max(now[2]!, half)
    if (half < rules.halfPeriodS[0] || half > rules.halfPeriodS[1] || mostHalf > leastHalf * (1 + rules.evenness)) return false
    if (this.#held > 2) {
      if (swing >= rules.shrink * now[0]!) return false
      const step = Math.log(now[0]! / swing)
      const leastStep = Math.min(now[3]!, step)
      const mostStep = Math.max(now[4]!, step)
      if (mostStep > rules.steadiness * leastStep) return false
      now[3] = leastStep
      now[4] = mostStep
    }
    now[1] = leastHalf
    now[2] = mostHalf
    return true
  }

  /** Ends a run before its newest turn; the last swing may begin another. */
  #close(): void {
    const held = this.#held
    if (held > rules.fewestSwings + 1) this.#note(held - 1)
    this.#turns.copyWithin(0, 2 * held - 4, 2 * held)
    this.#held = 2
    this.#forget()
    this.#now.fill(this.#turns[2]! - this.#turns[0]!, 1, 3)
  }

  #forget(): void {
    const now = this.#now
    now[1] = Infinity
    now[2] = 0
    now[3] = Infinity
    now[4] = 0
  }

  /** Takes up the run of the first turns, where it is one. */
  #note(turns: number): void {
    if (turns <= rules.fewestSwings) return
    const times = Array.from({ length: turns }, (_, at) => this.#turns[2 * at]!)
    const swings = Array.from({ length: turns - 1 }, (_, at) => Math.abs(this.#turns[2 * at + 3]! - this.#turns[2 * at + 1]!))
    const dampingRatio = ratioFromDecrement(decrement(swings), 'halfCycle')
    const dampedHz = swings.length / (2 * (times.at(-1)! - times[0]!))
    this.#count++
    if (this.#found.length < mostKept) {
      this.#found.push({ atS: times[0]!, swings: swings.length, dampingRatio, dampedHz, naturalHz: dampedHz / Math.sqrt(1 - dampingRatio ** 2) })
    }
  }

  /** A gap, or the end of the log. */
  finish(): void {
    this.#note(this.#held)
    this.#held = 0
    this.#forget()
  }

  summary(): DecayStatistics | undefined {
    if (this.#found.length === 0) return undefined
    const ratios = this.#found.map(({ dampingRatio }) => dampingRatio).sort((a, b) => a - b)
    const frequencies = this.#found.map(({ naturalHz }) => naturalHz).sort((a, b) => a - b)
    return {
      count: this.#count, dampingRatio: middle(ratios, 0.5), naturalHz: middle(frequencies, 0.5),
      dampingRatioFrom: middle(ratios, 0.25), dampingRatioTo: middle(ratios, 0.75), found: this.#found,
    }
  }
}

function middle(sorted: readonly number[], share: number): number {
  const rank = share * (sorted.length - 1)
  const low = Math.floor(rank)
  return sorted[low]! + (rank - low) * ((sorted[low + 1] ?? sorted[low]!) - sorted[low]!)
}
