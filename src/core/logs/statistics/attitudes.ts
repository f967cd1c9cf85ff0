import { attitude, type PlaneGeometry } from '../../compute/geometry/attitude'
import { CountedValues } from './countedValues'
import { percentiles } from './percentiles'

/** How the machine lay: 5 % of the samples below, half, 95 % below. */
export interface AttitudeStatistics {
  samples: number
  /** Nose up above zero, against the machine with both ends fully extended. */
  pitchDeg: Spread
  rakeDeg: Spread
  trailMm: Spread
}

export interface Spread {
  p5: number
  p50: number
  p95: number
}

/** Attitude from both ends, as `attitude` has it: exact in the plane, level road, tyres that do not give. */
export class Attitudes {
  readonly #pitch = new CountedValues({ from: -45, to: 45 })
  readonly #rake = new CountedValues({ from: 0, to: 90 })
  readonly #trail = new CountedValues({ from: -200, to: 400 })
  readonly #one = new Float64Array(1)
  #samples = 0
  #skip = 0

  /** The geometry with both ends fully extended; every `every`-th pair of samples is worked out. */
  constructor(readonly geometry: PlaneGeometry, readonly every: number) {}

  add(front: Float64Array, rear: Float64Array, count: number): void {
    for (let at = 0; at < count; at++) {
      if (++this.#skip < this.every) continue
      this.#skip = 0
      const lying = attitude(this.geometry, { frontShorterMm: front[at]!, rearSunkMm: rear[at]! })
      if (Number.isNaN(lying.pitchDeg + lying.trailMm)) continue
      this.#samples++
      this.#count(this.#pitch, lying.pitchDeg)
      this.#count(this.#rake, lying.rakeDeg)
      this.#count(this.#trail, lying.trailMm)
    }
  }

  #count(into: CountedValues, value: number): void {
    this.#one[0] = value
    into.add(this.#one, 0, 1)
  }

  summary(): AttitudeStatistics | undefined {
    if (this.#samples === 0) return undefined
    return { samples: this.#samples, pitchDeg: spread(this.#pitch), rakeDeg: spread(this.#rake), trailMm: spread(this.#trail) }
  }
}

function spread(counted: CountedValues): Spread {
  const [p5, p50, p95] = percentiles(counted.counts(), [5, 50, 95])
  return { p5: p5!, p50: p50!, p95: p95! }
}
