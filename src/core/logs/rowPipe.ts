import { findUnit, toBase } from '../notation/units'
import { say } from '../words/say'
import type { EndName } from './mapping/mapping'
import type { Resolved } from './mapping/resolveMapping'
import type { LogOptions } from './options'
import { isLogProblem, type LogProblem } from './problem'
import type { RowBlock, Wanted } from './reading/readTable'
import type { Count } from './reading/tally'
import { Rows, windowProblem, type RowSlots, type TakeRows, type Window } from './series/rows'
import { findSpacing, spacingAt, type Spacing } from './series/spacing'
import { Timeline } from './series/timeline'
import { plausible } from './statistics/plausible'

export interface PipeFacts {
  resolved: Resolved
  options: LogOptions
  window: Window
}

/** What the first rows told. */
export interface PipeStart {
  spacing: Spacing
  /** From which reading of the brake on it is braking. */
  brakeOn?: number
}

/** Whoever works on the rows: told how they are spaced, then given them. */
export interface RowSink {
  begin: (start: PipeStart) => void
  take: TakeRows
}

/** What became of the rows, as plain data: it may come from another thread. */
export interface PipeEnd {
  problem?: LogProblem
  /** By position: readings that no suspension can be at. */
  implausible: readonly Count[]
  withoutTime: number
  withoutSample: number
  /** Rows outside of the window. */
  outside: number
  midnights: number
  /** Braking is not looked for in the column named for it: nobody says from which reading on. */
  brakeUnknown: boolean
}

const endNames: readonly EndName[] = ['front', 'rear']

/** From blocks of rows as they stand in the file to rows of use: times in s, positions in mm, and the spacing found in the first of them. */
export class RowPipe {
  readonly wanted: readonly Wanted[]
  problem: LogProblem | undefined
  readonly #facts: PipeFacts
  readonly #sink: RowSink
  readonly #rows: Rows
  readonly #timeline: Timeline
  readonly #slots: RowSlots
  #begun = false
  #brakeUnknown = false
  #counted = 0

  constructor(facts: PipeFacts, sink: RowSink) {
    this.#facts = facts
    this.#sink = sink
    const { resolved: { time, ends, brake, lap } } = facts
    const columns: Wanted[] = []
    const slotFor = (column: number, clock = false) => columns.push({ column, clock }) - 1
    const timeSlot = time && slotFor(time.column, time.clock)
    const positions = endNames.flatMap((end) => (ends[end] ? [{ slot: slotFor(ends[end].column), factor: ends[end].factor, shift: ends[end].shift, ...plausible(ends[end].travelMm) }] : []))
    const held = [brake, lap].flatMap((each) => (each ? [slotFor(each.column)] : []))
    this.#slots = { positions, held, ...(timeSlot === undefined ? {} : { time: timeSlot }), ...(lap ? { lap: held.length - 1 } : {}) }
    this.wanted = columns
    this.#timeline = new Timeline({ perS: time?.perS ?? 1, clock: time?.clock ?? false })
    this.#rows = new Rows(this.#slots, facts.window, sink.take)
  }

  /** False where there is no need of more rows. */
  get wantsMore(): boolean {
    return !this.problem && !this.#rows.done
  }

  /** The next rows, no more at once than `blockRows`; their arrays are written into. */
  push(block: RowBlock): void {
    if (!this.wantsMore) return
    const times = this.#timesOf(block)
    if (this.#timeline.backwardsRow >= 0) this.problem = windowProblem(this.#facts.window, block.lines[this.#timeline.backwardsRow]!)
    if (!this.#begun) this.#begin(times, block)
    if (!this.problem) this.#rows.push(times, block)
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
    this.#timeline.convert(times, block.rows)
    return times
  }

  /** The first rows tell how far apart the samples are. */
  #begin(times: Float64Array, block: RowBlock): void {
    this.#begun = true
    const positions = this.#slots.positions.map(({ slot }) => block.slots[slot]!)
    const useful = Array.from({ length: block.rows }, (_, row) => row).filter((row) => !Number.isNaN(times[row]!) && positions.some((values) => !Number.isNaN(values[row]!)))
    const { rateHz } = this.#facts.resolved
    const spacing = rateHz !== undefined ? spacingAt(rateHz) : findSpacing(useful.map((row) => times[row]!), useful.map((row) => block.lines[row]!))
    if (isLogProblem(spacing)) {
      this.problem = spacing
      return
    }
    const brakeOn = this.#brakeOn(block)
    this.#sink.begin({ spacing, ...(brakeOn === undefined ? {} : { brakeOn }) })
  }

  /** From which reading on the brake is on: as the mapping says, from its unit, or half for a switch of 0 and 1. */
  #brakeOn(block: RowBlock): number | undefined {
    const { resolved: { brake }, options } = this.#facts
    if (!brake || brake.on !== undefined) return brake?.on
    const unit = brake.unit === undefined ? undefined : findUnit(brake.unit)
    if (unit?.dimension === 'pressure') return options.brakeOnBar / toBase(1, unit)
    const readings = block.slots[this.#slots.held[0]!]!.subarray(0, block.rows)
    if (readings.every((reading) => reading === 0 || reading === 1 || Number.isNaN(reading))) return 0.5
    this.#brakeUnknown = true
    return undefined
  }

  end(): PipeEnd {
    const { implausible, withoutTime, withoutSample, outside } = this.#rows
    const { problem } = this
    return { implausible, withoutTime, withoutSample, outside, midnights: this.#timeline.midnights, brakeUnknown: this.#brakeUnknown, ...(problem ? { problem } : {}) }
  }
}

/** Why there was not one sample, where the window is to blame. */
export function emptyWindow(window: Window, { outside }: PipeEnd): LogProblem | undefined {
  if (outside === 0) return undefined
  return { message: window.lap === undefined ? say('no row lies in this window of time') : say`no row is of lap ${window.lap}` }
}
