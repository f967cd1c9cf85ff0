import type { Channel } from '../mapping/resolveMapping'
import type { EndName } from '../mapping/mapping'
import type { LogOptions } from '../options'
import type { EvenBlock } from '../series/evenSamples'
import type { Fit } from '../series/savitzkyGolay'
import { EndRun } from './endRun'
import type { EndStatistics, LapEnd, LapStatistics } from './logStatistics'

/** A column that changes with every row is no lap counter; the laps after so many are left out, and said to be. */
export const mostLaps = 1000

/** Statistics lap by lap, one lap in memory at a time. */
export class LapRuns {
  readonly #found: LapStatistics[] = []
  leftOut = 0
  #lap = NaN
  #from = 0
  #to = 0
  #runs: Partial<Record<EndName, EndRun>> = {}

  constructor(readonly ends: Partial<Record<EndName, Channel>>, readonly options: LogOptions, readonly fit: Fit, readonly spacingS: number) {}

  /** The block's samples with the number of the lap each belongs to; before the first lap there is none. */
  add(block: EvenBlock, laps: Float64Array, channels: Partial<Record<EndName, Float64Array>>, whole: boolean): void {
    for (let from = 0; from < block.count;) {
      const lap = laps[from]!
      let to = from + 1
      while (to < block.count && Object.is(laps[to]!, lap)) to++
      if (!Object.is(lap, this.#lap)) this.#begin(lap, block.times[from]!)
      this.#to = block.times[to - 1]!
      for (const end of ['front', 'rear'] as const) if (channels[end]) this.#runs[end]?.add(block, channels[end], { from, to, whole })
      from = to
    }
  }

  #begin(lap: number, time: number): void {
    this.#end()
    this.#lap = lap
    this.#from = time
    const wanted = !Number.isNaN(lap) && this.#found.length < mostLaps
    if (!Number.isNaN(lap) && !wanted) this.leftOut++
    const run = (end: EndName) => (wanted && this.ends[end] ? { [end]: new EndRun(this.ends[end], { ...this.options, tracePieces: 0 }, this.fit, this.spacingS) } : {})
    this.#runs = { ...run('front'), ...run('rear') }
  }

  #end(): void {
    const { front, rear } = this.#runs
    if (!front && !rear) return
    const found = { front: front?.finish(), rear: rear?.finish() }
    const ends = Object.fromEntries(Object.entries(found).flatMap(([end, statistics]) => (statistics ? [[end, lapEnd(statistics)]] : [])))
    this.#found.push({ lap: this.#lap, fromS: this.#from, forS: this.#to - this.#from, ends })
    this.#runs = {}
  }

  finish(): LapStatistics[] {
    this.#end()
    return this.#found
  }
}

function lapEnd({ position: { medianMm, meanMm, deepestMm }, bottoming, velocity }: EndStatistics): LapEnd {
  return { medianMm, meanMm, deepestMm, ...(bottoming ? { bottomed: bottoming.times } : {}), ...(velocity ? { sharesPct: velocity.sharesPct } : {}) }
}
