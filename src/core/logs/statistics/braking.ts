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
  #now: { from: number; last: number; deepest: number; sum: number; n: number; leastRear: number } | undefined

  constructor(readonly from: BrakingStatistics['from'], readonly limits: BrakingLimits) {}

  /** Whether it is braking now; whoever adds samples watches the limits. */
  get isOn(): boolean {
    return this.#now !== undefined
  }

  /** A sample while braking, which begins with the first: both positions in mm, NaN where one is not known. */
  add(time: number, front: number, rear: number): void {
    const now = this.#now ??= { from: time, last: time, deepest: -Infinity, sum: 0, n: 0, leastRear: Infinity }
    now.last = time
    if (!Number.isNaN(front)) {
      now.deepest = Math.max(now.deepest, front)
      now.sum += front
      now.n++
    }
    if (rear < now.leastRear) now.leastRear = rear
  }

  /** A gap, or the end of the log. */
  finish(): void {
    const now = this.#now
    this.#now = undefined
    if (!now || now.n === 0 || now.last - now.from < this.limits.atLeastS) return
    this.count++
    this.#totalS += now.last - now.from
    if (this.#events.length === mostKept) return
    const leastRearMm = Number.isFinite(now.leastRear) ? { leastRearMm: now.leastRear } : {}
    this.#events.push({ atS: now.from, forS: now.last - now.from, deepestFrontMm: now.deepest, meanFrontMm: now.sum / now.n, ...leastRearMm })
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
