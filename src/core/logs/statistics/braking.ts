/** When braking begins and ends: a signal at `on` or above begins it, below `off` ends it; shorter ones do not count. */
export interface BrakingLimits {
  on: number
  off: number
  atLeastS: number
}

export interface BrakingEvent {
  atS: number
  forS: number
  deepestFrontMm: number
  meanFrontMm: number
  /** How far the rear came out, where it is logged: its least position. */
  leastRearMm?: number
}

export interface BrakingStatistics {
  /** `brake` from a brake's own column; `ends` guessed from the fork being much further in than the rear. */
  from: 'brake' | 'ends'
  limits: BrakingLimits
  count: number
  totalS: number
  /** Medians over all events that are kept. */
  deepestFrontMm: number
  meanFrontMm: number
  events: BrakingEvent[]
}

const mostKept = 1000

/** Finds braking, and what the fork did in it. */
export class Braking {
  count = 0
  #totalS = 0
  readonly #events: BrakingEvent[] = []
  #on = false
  /** When it began and its newest sample, then of the front the deepest, the sum and how many, and the least rear; numbers of an object would be made anew with every sample. */
  readonly #now = new Float64Array(6)

  constructor(readonly from: BrakingStatistics['from'], readonly limits: BrakingLimits) {}

  /** Whether it is braking now; whoever adds samples watches the limits. */
  get isOn(): boolean {
    return this.#on
  }

  /** A sample while braking, which begins with the first: both positions in mm, NaN where one is not known. */
  add(time: number, front: number, rear: number): void {
    const now = this.#now
    if (!this.#on) now.set([time, time, -Infinity, 0, 0, Infinity])
    this.#on = true
    now[1] = time
    if (!Number.isNaN(front)) {
      if (front > now[2]!) now[2] = front
      now[3]! += front
      now[4]!++
    }
    if (rear < now[5]!) now[5] = rear
  }

  /** A gap, or the end of the log. */
  finish(): void {
    if (!this.#on) return
    this.#on = false
    const now = this.#now
    const [atS, forS, n] = [now[0]!, now[1]! - now[0]!, now[4]!]
    if (n === 0 || forS < this.limits.atLeastS) return
    this.count++
    this.#totalS += forS
    if (this.#events.length === mostKept) return
    const leastRearMm = Number.isFinite(now[5]!) ? { leastRearMm: now[5]! } : {}
    this.#events.push({ atS, forS, deepestFrontMm: now[2]!, meanFrontMm: now[3]! / n, ...leastRearMm })
  }

  summary(): BrakingStatistics | undefined {
    if (this.count === 0) return undefined
    const median = (pick: (event: BrakingEvent) => number) => {
      const sorted = this.#events.map(pick).sort((a, b) => a - b)
      return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2
    }
    return {
      from: this.from, limits: this.limits, count: this.count, totalS: this.#totalS,
      deepestFrontMm: median(({ deepestFrontMm }) => deepestFrontMm), meanFrontMm: median(({ meanFrontMm }) => meanFrontMm), events: this.#events,
    }
  }
}
