import type { PlaneGeometry } from '../../compute/geometry/attitude'
import type { Channel } from '../mapping/resolveMapping'
import type { EndName } from '../mapping/mapping'
import type { LogOptions } from '../options'
import type { EvenBlock } from '../series/evenSamples'
import { Attitudes } from './attitudes'
import { Braking } from './braking'
import { FreeDecays } from './freeDecays'
import { FrontRear } from './frontRear'
import type { LogStatistics } from './logStatistics'
import { Packing } from './packing'
import { Spectra } from './spectrum'
import { TurningPoints } from './turningPoints'

const room = 4096

export interface SlowFacts {
  ends: Partial<Record<EndName, Channel>>
  options: LogOptions
  /** Of the averaged samples, and how many went into each. */
  rateHz: number
  averagedBy: number
  geometry?: PlaneGeometry
  /** From which reading of the brake on it is braking, where there is a column for it. */
  brakeOn?: number
}

/** Attitude is worked out so often a second, at least. */
const attitudesPerS = 25

/** What is slow enough to be taken from averaged samples: decays, spectra, front against rear, attitude, braking. */
export class SlowRun {
  readonly #facts: SlowFacts
  readonly #wheel: Record<EndName, Float64Array> = { front: new Float64Array(room), rear: new Float64Array(room) }
  readonly #decays: Record<EndName, FreeDecays> = { front: new FreeDecays(), rear: new FreeDecays() }
  readonly #packing: Record<EndName, Packing>
  readonly #turns: Record<EndName, TurningPoints>
  readonly #spectra: Spectra
  readonly #frontRear: FrontRear | undefined
  readonly #attitudes: Attitudes | undefined
  readonly #braking: Braking | undefined

  constructor(facts: SlowFacts) {
    this.#facts = facts
    const { ends: { front, rear }, options, rateHz, averagedBy, geometry, brakeOn } = facts
    this.#packing = { front: new Packing(front?.travelMm), rear: new Packing(rear?.travelMm) }
    const turns = (end: EndName) => new TurningPoints(options.swingMm, (time, mm) => {
      this.#decays[end].turn(time, mm)
      this.#packing[end].turn(time, mm)
    })
    this.#turns = { front: turns('front'), rear: turns('rear') }
    this.#spectra = new Spectra(rateHz, averagedBy)
    const both = front?.travelMm !== undefined && rear?.travelMm !== undefined ? [front.travelMm, rear.travelMm] as const : undefined
    this.#frontRear = both && new FrontRear(both)
    this.#attitudes = front && rear && geometry && new Attitudes(geometry, Math.max(1, Math.floor(rateHz / attitudesPerS)))
    if (front && brakeOn !== undefined) this.#braking = new Braking('brake', { on: brakeOn, off: brakeOn / 2, atLeastS: options.brakeAtLeastS })
    else if (both) this.#braking = new Braking('ends', options.braking)
  }

  /** Averaged samples, the sensors' mm by end. */
  add(block: EvenBlock, channels: Partial<Record<EndName | 'brake', Float64Array>>): void {
    if (block.fresh) this.#break()
    const front = this.#atWheel('front', channels.front, block.count)
    const rear = this.#atWheel('rear', channels.rear, block.count)
    const first = front ?? rear
    if (!first) return
    this.#spectra.push(first, rear ?? first, block.count)
    if (front) this.#swing('front', block, front)
    if (rear) this.#swing('rear', block, rear)
    if (front && rear) {
      this.#frontRear?.add(front, rear, block.count)
      this.#attitudes?.add(front, rear, block.count)
    }
    if (front && this.#braking) this.#brake(this.#braking, block, { front, rear, brake: channels.brake })
  }

  #atWheel(end: EndName, values: Float64Array | undefined, count: number): Float64Array | undefined {
    const drive = this.#facts.ends[end]?.toWheel
    if (!values || !drive) return values
    drive.all(values, this.#wheel[end], count)
    return this.#wheel[end]
  }

  #swing(end: EndName, { times, count, holes }: EvenBlock, wheel: Float64Array): void {
    for (let from = 0; from < count;) {
      let to = holes ? from : count
      while (to < count && !Number.isNaN(wheel[to]!)) to++
      this.#turns[end].add(times, wheel, from, to)
      if (to < count) this.#breakSwing(end)
      from = to + 1
    }
  }

  #brake(braking: Braking, { times, count }: EvenBlock, { front, rear, brake }: { front: Float64Array; rear: Float64Array | undefined; brake: Float64Array | undefined }): void {
    const { ends } = this.#facts
    const perFront = 100 / (ends.front?.travelMm ?? NaN)
    const perRear = 100 / (ends.rear?.travelMm ?? NaN)
    const { on, off } = braking.limits
    for (let at = 0; at < count; at++) {
      const signal = braking.from === 'brake' ? (brake ? brake[at]! : NaN) : front[at]! * perFront - (rear ? rear[at]! : NaN) * perRear
      // Nearly all samples are neither: no more is done about them.
      if (braking.isOn ? signal < off : !(signal >= on)) {
        if (braking.isOn) braking.finish()
      } else braking.add(times[at]!, front[at]!, rear ? rear[at]! : NaN)
    }
  }

  #break(): void {
    this.#spectra.restart()
    this.#braking?.finish()
    this.#breakSwing('front')
    this.#breakSwing('rear')
  }

  #breakSwing(end: EndName): void {
    this.#decays[end].finish()
    this.#packing[end].finish()
    this.#turns[end].restart()
  }

  /** Ends the stretch and tells what it found, into the statistics of both ends as well. */
  finish(into: LogStatistics): LogStatistics {
    this.#break()
    const { front, rear } = this.#facts.ends
    const [frontRear, attitude, braking] = [this.#frontRear?.summary(), this.#attitudes?.summary(), this.#braking?.summary()]
    const of = (end: EndName, which: 0 | 1) => {
      const [freeDecays, spectrum] = [this.#decays[end].summary(), this.#spectra.summary(which)]
      const packing = this.#packing[end].summary(end === 'front' ? braking?.events : [])
      return into[end] && { [end]: { ...into[end], ...(freeDecays ? { freeDecays } : {}), ...(packing ? { packing } : {}), ...(spectrum ? { spectrum } : {}) } }
    }
    return {
      ...into, ...(front ? of('front', 0) : {}), ...(rear ? of('rear', front ? 1 : 0) : {}),
      ...(frontRear ? { frontRear } : {}), ...(attitude ? { attitude } : {}), ...(braking ? { braking } : {}),
    }
  }
}
