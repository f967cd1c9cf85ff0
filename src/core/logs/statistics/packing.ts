import { phrase } from '../../words/say'

/** A run of quick hits: whether the end came out less far from hit to hit. */
export interface Train {
  /** When its first hit was deepest, and how long until its last was. */
  atS: number
  forS: number
  hits: number
  /** From where the first hit began to the least deep place where one of the later half did, deeper above zero. */
  driftMm: number
  packed: boolean
}

export interface PackingStatistics {
  trains: number
  packed: number
  /** The furthest drift of the packed ones. */
  worstMm: number
  limits: PackingLimits
  /** The packed ones. */
  places: Train[]
}

/** What counts as packing down. */
export interface PackingLimits {
  fewestHits: number
  /** From the deepest place of one hit to that of the next, at most. */
  withinS: number
  /** A hit goes in by so much, and a train drifts by so much, at least. */
  hitMm: number
  driftMm: number
}

/** Told beside the number. The method is common practice put into figures, without a source; the figures are our own choice. */
export const packingRules = phrase('packing down: five or more hits, each within 0.5 s of the one before and 5 % of the travel deep, of which all of the later half begin deeper than the first, by 5 % of the travel or more; not while braking. Common practice, the limits are our own choice')

const mostKept = 1000

/**
 * Finds runs of quick hits in which an end sits deeper from hit to hit, for its rebound is too slow to bring it out in
 * time. What tells it is the place from which each hit begins: a hard hit goes deep without any packing.
 */
export class Packing {
  readonly limits: PackingLimits
  readonly #trains: Train[] = []
  /** Where each hit of the train that runs began, mm. */
  #starts: number[] = []
  /** When the first and the last hit were deepest, the time and the place of the turn before; doubles of their own would be made anew with every turn. */
  readonly #now = new Float64Array(3).fill(NaN)

  /** Limits in mm follow from the travel; from 100 mm where it is not known. */
  constructor(travelMm = 100) {
    this.limits = { fewestHits: 5, withinS: 0.5, hitMm: 0.05 * travelMm, driftMm: 0.05 * travelMm }
  }

  /** The turning points of the movement, one after the other. */
  turn(time: number, mm: number): void {
    const now = this.#now
    const before = now[2]!
    now[2] = mm
    if (!(mm > before)) return
    if (mm - before < this.limits.hitMm || time - now[1]! > this.limits.withinS) this.#close()
    if (mm - before < this.limits.hitMm) return
    if (this.#starts.length === 0) now[0] = time
    this.#starts.push(before)
    now[1] = time
  }

  #close(): void {
    const starts = this.#starts
    if (starts.length === 0) return
    this.#starts = []
    if (starts.length < this.limits.fewestHits || this.#trains.length === mostKept) return
    // It packs within a few hits and stays there: what counts is that it does not come back out.
    const later = starts.slice(Math.floor(starts.length / 2))
    const driftMm = Math.min(...later) - starts[0]!
    const packed = driftMm >= this.limits.driftMm
    this.#trains.push({ atS: this.#now[0]!, forS: this.#now[1]! - this.#now[0]!, hits: starts.length, driftMm, packed })
  }

  /** A gap, or the end of the log. */
  finish(): void {
    this.#close()
    this.#now[2] = NaN
  }

  /** `undefined` where no train was found. Those in a braking do not count: there the load drives the fork in. */
  summary(brakings: readonly { atS: number; forS: number }[] = []): PackingStatistics | undefined {
    const isBraking = ({ atS, forS }: Train) => brakings.some((braking) => braking.atS < atS + forS && atS < braking.atS + braking.forS)
    const trains = this.#trains.filter((train) => !isBraking(train))
    if (trains.length === 0) return undefined
    const places = trains.filter(({ packed }) => packed)
    return { trains: trains.length, packed: places.length, worstMm: Math.max(0, ...places.map(({ driftMm }) => driftMm)), limits: this.limits, places }
  }
}
