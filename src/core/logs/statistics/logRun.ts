import type { PlaneGeometry } from '../../compute/geometry/attitude'
import type { EndName } from '../mapping/mapping'
import type { Resolved } from '../mapping/resolveMapping'
import type { LogOptions } from '../options'
import { Averaged } from '../series/averaged'
import { EvenSamples, type Between, type EvenBlock } from '../series/evenSamples'
import type { Fit } from '../series/savitzkyGolay'
import type { Spacing } from '../series/spacing'
import { EndRun } from './endRun'
import { LapRuns } from './lapRuns'
import type { LogStatistics } from './logStatistics'
import { SlowRun } from './slowRun'

export interface RunFacts {
  resolved: Resolved
  options: LogOptions
  spacing: Spacing
  geometry?: PlaneGeometry
  brakeOn?: number
}

/** What is slow is averaged down to so many samples a second or a little more. */
const slowRateHz = 100

const endNames: readonly EndName[] = ['front', 'rear']

/** The odd number of points nearest a time, and never fewer than the least. */
export function fitFor({ fitS, fewestPoints, fitOrder }: LogOptions, spacingS: number): Fit {
  return { points: Math.max(fewestPoints, 2 * Math.round((fitS / spacingS - 1) / 2) + 1), order: fitOrder }
}

/** Everything that is found out about a stretch of a log, from rows of times and positions. */
export class LogRun {
  readonly even: EvenSamples
  readonly fit: Fit
  readonly #facts: RunFacts
  readonly #ends: Partial<Record<EndName, EndRun>>
  readonly #laps: LapRuns | undefined
  readonly #averaged: Averaged
  readonly #slow: SlowRun
  readonly #averagedBy: number
  #first = NaN
  #last = NaN

  constructor(facts: RunFacts) {
    const { resolved: { ends, brake, lap }, options, spacing, geometry, brakeOn } = facts
    this.#facts = facts
    this.fit = fitFor(options, spacing.s)
    const run = (end: EndName) => (ends[end] ? { [end]: new EndRun(ends[end], options, this.fit, spacing.s) } : {})
    this.#ends = { ...run('front'), ...run('rear') }
    this.#laps = lap && new LapRuns(ends, options, this.fit, spacing.s)
    const kinds: Between[] = [...endNames.filter((end) => ends[end]).map(() => 'straight' as const), ...(brake ? ['hold' as const] : []), ...(lap ? ['hold' as const] : [])]
    this.even = new EvenSamples(spacing, kinds, (block) => this.#block(block))
    const by = this.#averagedBy = Math.max(1, Math.floor(1 / spacing.s / slowRateHz))
    this.#averaged = new Averaged(by, kinds.length, (block) => this.#slow.add(block, this.#named(block)))
    this.#slow = new SlowRun({ ends, options, rateHz: 1 / spacing.s / by, averagedBy: by, ...(geometry ? { geometry } : {}), ...(brakeOn === undefined ? {} : { brakeOn }) })
  }

  /** The channels of a block by what they are. */
  #named({ channels }: EvenBlock): Partial<Record<EndName | 'brake' | 'lap', Float64Array>> {
    const { ends, brake, lap } = this.#facts.resolved
    const order = [...endNames.filter((end) => ends[end]), ...(brake ? ['brake' as const] : []), ...(lap ? ['lap' as const] : [])]
    return Object.fromEntries(order.map((name, at) => [name, channels[at]!]))
  }

  #block(block: EvenBlock): void {
    const named = this.#named(block)
    if (Number.isNaN(this.#first)) this.#first = block.times[0]!
    this.#last = block.times[block.count - 1]!
    const whole = !block.holes
    for (const end of endNames) if (named[end]) this.#ends[end]?.add(block, named[end], { from: 0, to: block.count, whole })
    if (named.lap) this.#laps?.add(block, named.lap, named, whole)
    this.#averaged.push(block)
  }

  /** Ends the run; `undefined` where there was not one sample. */
  finish(rows: number): LogStatistics | undefined {
    this.even.finish()
    this.#averaged.finish()
    const [front, rear] = [this.#ends.front?.finish(), this.#ends.rear?.finish()]
    if (!front && !rear) return undefined
    const { spacing, options } = this.#facts
    const { interpolated, gaps, gapS } = this.even
    const laps = this.#laps?.finish()
    return this.#slow.finish({
      sampling: {
        rows, rateHz: 1 / spacing.s, fromS: this.#first, toS: this.#last, interpolated, gaps, gapS,
        velocityFit: { points: this.fit.points, order: options.fitOrder, spanS: this.fit.points * spacing.s }, averagedBy: this.#averagedBy,
      },
      ...(front ? { front } : {}), ...(rear ? { rear } : {}), ...(laps ? { laps } : {}),
    })
  }

  /** Counts of what had to be left out, for the notes. */
  get counts(): { beyondTable: number; missing: Partial<Record<EndName, number>>; withoutVelocity: number; lapsLeftOut: number } {
    const runs = endNames.flatMap((end) => (this.#ends[end] ? [[end, this.#ends[end]] as const] : []))
    return {
      beyondTable: runs.reduce((sum, [, run]) => sum + run.beyondTable, 0), missing: Object.fromEntries(runs.map(([end, run]) => [end, run.missing])),
      withoutVelocity: runs.reduce((sum, [, run]) => sum + run.withoutVelocity, 0), lapsLeftOut: this.#laps?.leftOut ?? 0,
    }
  }
}
