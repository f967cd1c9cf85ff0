import type { PlaneGeometry } from '../compute/geometry/attitude'
import { findUnit, toBase } from '../notation/units'
import { say } from '../words/say'
import type { EndName } from './mapping/mapping'
import type { Resolved } from './mapping/resolveMapping'
import type { LogOptions } from './options'
import { isLogProblem, type LogProblem } from './problem'
import type { RowBlock, Wanted } from './reading/readTable'
import { Rows, windowProblem, type RowSlots, type Window } from './series/rows'
import { findSpacing, spacingAt } from './series/spacing'
import { Timeline } from './series/timeline'
import { plausible } from './statistics/plausible'
import type { LogStatistics } from './statistics/logStatistics'
import { LogRun } from './statistics/logRun'

export interface PipeFacts {
  resolved: Resolved
  options: LogOptions
  window: Window
  geometry?: PlaneGeometry
}

const endNames: readonly EndName[] = ['front', 'rear']

/** From blocks of rows as they stand in the file to a run: times in s, positions in mm, and the spacing found in the first rows. */
export class RowPipe {
  readonly wanted: readonly Wanted[]
  readonly rows: Rows
  readonly timeline: Timeline
  run: LogRun | undefined
  problem: LogProblem | undefined
  /** Why braking is not looked for in the column named for it. */
  brakeUnknown = false
  readonly #facts: PipeFacts
  readonly #slots: RowSlots
  #counted = 0

  constructor(facts: PipeFacts) {
    this.#facts = facts
    const { resolved: { time, ends, brake, lap } } = facts
    const columns: Wanted[] = []
    const slotFor = (column: number, clock = false) => columns.push({ column, clock }) - 1
    const timeSlot = time && slotFor(time.column, time.clock)
    const positions = endNames.flatMap((end) => (ends[end] ? [{ slot: slotFor(ends[end].column), factor: ends[end].factor, shift: ends[end].shift, ...plausible(ends[end].travelMm) }] : []))
    const held = [brake, lap].flatMap((each) => (each ? [slotFor(each.column)] : []))
    this.#slots = { positions, held, ...(timeSlot === undefined ? {} : { time: timeSlot }), ...(lap ? { lap: held.length - 1 } : {}) }
    this.wanted = columns
    this.timeline = new Timeline({ perS: time?.perS ?? 1, clock: time?.clock ?? false })
    this.rows = new Rows(this.#slots, facts.window, (times, channels, rows, holes) => this.run!.even.push(times, channels, rows, holes))
  }

  get done(): boolean {
    return this.rows.done
  }

  push(block: RowBlock): void {
    if (this.problem || this.done) return
    const times = this.#timesOf(block)
    if (this.timeline.backwardsRow >= 0) this.problem = windowProblem(this.#facts.window, block.lines[this.timeline.backwardsRow]!)
    if (!this.run) this.#begin(times, block)
    if (!this.problem) this.rows.push(times, block)
  }

  #timesOf(block: RowBlock): Float64Array {
    const { time } = this.#slots
    if (time === undefined) {
      const rate = this.#facts.resolved.rateHz!
      const times = Float64Array.from({ length: block.rows }, (_, row) => (this.#counted + row) / rate)
      this.#counted += block.rows
      return times
    }
    const times = block.slots[time]!
    this.timeline.convert(times, block.rows)
    return times
  }

  /** The first rows tell how far apart the samples are. */
  #begin(times: Float64Array, block: RowBlock): void {
    const positions = this.#slots.positions.map(({ slot }) => block.slots[slot]!)
    const useful = Array.from({ length: block.rows }, (_, row) => row).filter((row) => !Number.isNaN(times[row]!) && positions.some((values) => !Number.isNaN(values[row]!)))
    const { rateHz } = this.#facts.resolved
    const spacing = rateHz !== undefined ? spacingAt(rateHz) : findSpacing(useful.map((row) => times[row]!), useful.map((row) => block.lines[row]!))
    if (isLogProblem(spacing)) this.problem = spacing
    else {
      const brakeOn = this.#brakeOn(block)
      const { resolved, options, geometry } = this.#facts
      this.run = new LogRun({ resolved, options, spacing, ...(geometry ? { geometry } : {}), ...(brakeOn === undefined ? {} : { brakeOn }) })
    }
  }

  /** From which reading on the brake is on: as the mapping says, from its unit, or half for a switch of 0 and 1. */
  #brakeOn(block: RowBlock): number | undefined {
    const { resolved: { brake }, options } = this.#facts
    if (!brake || brake.on !== undefined) return brake?.on
    const unit = brake.unit === undefined ? undefined : findUnit(brake.unit)
    if (unit?.dimension === 'pressure') return options.brakeOnBar / toBase(1, unit)
    const readings = block.slots[this.#slots.held[0]!]!.subarray(0, block.rows)
    if (readings.every((reading) => reading === 0 || reading === 1 || Number.isNaN(reading))) return 0.5
    this.brakeUnknown = true
    return undefined
  }

  finish(rows: number): LogStatistics | undefined {
    const statistics = this.run?.finish(rows)
    const { window } = this.#facts
    if (!statistics && !this.problem && this.rows.outside > 0) {
      this.problem = { message: window.lap === undefined ? say('no row lies in this window of time') : say`no row is of lap ${window.lap}` }
    }
    return statistics && Object.keys(window).length > 0 ? { ...statistics, window } : statistics
  }
}
