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

interface Turn {
  time: number
  mm: number
}

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
  #turns: Turn[] = []
  #swing = 0
  #halves = { least: Infinity, most: 0 }
  #steps = { least: Infinity, most: 0 }

  turn(time: number, mm: number): void {
    const before = this.#turns.at(-1)
    this.#turns.push({ time, mm })
    if (!before) return
    const swing = Math.abs(mm - before.mm)
    if (!this.#belongs(swing, time - before.time)) this.#close()
    this.#swing = swing
  }

  /** Whether the newest swing belongs to the decay of those before; takes it up if so. */
  #belongs(swing: number, half: number): boolean {
    const [shortest, longest] = rules.halfPeriodS
    const [leastHalf, mostHalf] = [Math.min(this.#halves.least, half), Math.max(this.#halves.most, half)]
    if (half < shortest || half > longest || mostHalf > leastHalf * (1 + rules.evenness)) return false
    if (this.#turns.length > 2) {
      if (swing >= rules.shrink * this.#swing) return false
      const step = Math.log(this.#swing / swing)
      const [leastStep, mostStep] = [Math.min(this.#steps.least, step), Math.max(this.#steps.most, step)]
      if (mostStep > rules.steadiness * leastStep) return false
      this.#steps.least = leastStep
      this.#steps.most = mostStep
    }
    this.#halves.least = leastHalf
    this.#halves.most = mostHalf
    return true
  }

  /** Ends a run before its newest turn; the last swing may begin another. */
  #close(): void {
    if (this.#turns.length > rules.fewestSwings + 1) this.#note(this.#turns.slice(0, -1))
    const [before, last] = [this.#turns.at(-2)!, this.#turns.at(-1)!]
    this.#turns = [before, last]
    const half = last.time - before.time
    this.#halves = { least: half, most: half }
    this.#steps = { least: Infinity, most: 0 }
  }

  #note(turns: readonly Turn[]): void {
    const swings = swingsOf(turns)
    if (swings.length < rules.fewestSwings) return
    const dampingRatio = ratioFromDecrement(decrement(swings), 'halfCycle')
    const dampedHz = swings.length / (2 * (turns.at(-1)!.time - turns[0]!.time))
    this.#count++
    if (this.#found.length < mostKept) {
      this.#found.push({ atS: turns[0]!.time, swings: swings.length, dampingRatio, dampedHz, naturalHz: dampedHz / Math.sqrt(1 - dampingRatio ** 2) })
    }
  }

  /** A gap, or the end of the log. */
  finish(): void {
    this.#note(this.#turns)
    this.#turns = []
    this.#halves = { least: Infinity, most: 0 }
    this.#steps = { least: Infinity, most: 0 }
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

function swingsOf(turns: readonly Turn[]): number[] {
  return turns.slice(1).map(({ mm }, at) => Math.abs(mm - turns[at]!.mm))
}

function middle(sorted: readonly number[], share: number): number {
  const rank = share * (sorted.length - 1)
  const low = Math.floor(rank)
  return sorted[low]! + (rank - low) * ((sorted[low + 1] ?? sorted[low]!) - sorted[low]!)
}
