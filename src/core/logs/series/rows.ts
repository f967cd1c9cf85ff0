import { say } from '../../words/say'
import type { LogProblem } from '../problem'
import type { RowBlock } from '../reading/readTable'
import { countOne, type Count } from '../reading/tally'

/** Which part of a log is wanted: times in s since its first row, or the rows of one lap. */
export interface Window {
  fromS?: number
  toS?: number
  lap?: number
}

/** Where a position is read, the factor and shift that make mm of a reading, and between which mm it can be at all. */
export interface PositionSlot {
  slot: number
  factor: number
  shift: number
  least: number
  most: number
}

/** The slots of a block of rows: positions, then what is held between samples. */
export interface RowSlots {
  /** Absent where times come from the rate. */
  time?: number
  positions: readonly PositionSlot[]
  /** Brake and lap: a sample holds until the next. */
  held: readonly number[]
  /** Which of `held` is the lap. */
  lap?: number
}

/** Rows with their times in s, positions in mm, and what is held filled in. The arrays are used again. */
export type TakeRows = (times: Float64Array, channels: readonly Float64Array[], rows: number, holes: boolean) => void

/**
 * Makes positions of readings, and leaves out the rows that are of no use: without a time, without a single position,
 * outside the window that is wanted.
 */
export class Rows {
  withoutTime = 0
  withoutSample = 0
  outside = 0
  /** By position: readings that no suspension can be at, those of a broken sensor; left out. */
  readonly implausible: Count[]
  /** Past the end of the window: nothing more is to come. */
  done = false
  readonly #last: Float64Array

  constructor(readonly slots: RowSlots, readonly window: Window, readonly take: TakeRows) {
    this.#last = new Float64Array(slots.held.length).fill(NaN)
    this.implausible = slots.positions.map(() => ({ times: 0 }))
  }

  /** `times` in s, and the block they came with; both are changed. */
  push(times: Float64Array, block: RowBlock): void {
    const positions = this.slots.positions.map(({ slot }) => block.slots[slot]!)
    const held = this.slots.held.map((slot) => block.slots[slot]!)
    const wild = this.slots.positions.filter((slot, at) => scale(positions[at]!, block, slot, this.implausible[at]!)).length > 0
    const holes = block.holes || wild
    held.forEach((values, at) => this.#hold(values, block.rows, at))
    const channels = [...positions, ...held]
    const { fromS, toS, lap } = this.window
    const all = !holes && fromS === undefined && toS === undefined && lap === undefined
    const rows = all ? block.rows : this.#select(times, channels, block.lines, block.rows)
    if (rows > 0) this.take(times, channels, rows, holes)
  }

  #hold(values: Float64Array, rows: number, at: number): void {
    let last = this.#last[at]!
    for (let row = 0; row < rows; row++) {
      if (Number.isNaN(values[row]!)) values[row] = last
      else last = values[row]!
    }
    this.#last[at] = last
  }

  /** Moves the rows that are wanted to the front; returns how many there are. */
  #select(times: Float64Array, channels: readonly Float64Array[], lines: Float64Array, rows: number): number {
    let kept = 0
    for (let row = 0; row < rows; row++) {
      if (!this.#isWanted(times[row]!, channels, row)) continue
      times[kept] = times[row]!
      lines[kept] = lines[row]!
      for (const values of channels) values[kept] = values[row]!
      kept++
    }
    return kept
  }

  #isWanted(time: number, channels: readonly Float64Array[], row: number): boolean {
    const { fromS = -Infinity, toS = Infinity, lap } = this.window
    if (Number.isNaN(time)) this.withoutTime++
    else if (time < fromS || time > toS || (lap !== undefined && this.#lapOf(channels, row) !== lap)) {
      this.outside++
      if (time > toS) this.done = true
    } else if (channels.slice(0, this.slots.positions.length).every((values) => Number.isNaN(values[row]!))) this.withoutSample++
    else return true
    return false
  }

  #lapOf(channels: readonly Float64Array[], row: number): number {
    return channels[this.slots.positions.length + (this.slots.lap ?? 0)]?.[row] ?? NaN
  }
}

/** Readings into mm, in place; those that cannot be become missing, and are counted. True where there was one. */
function scale(values: Float64Array, { rows, lines }: RowBlock, { factor, shift, least, most }: PositionSlot, implausible: Count): boolean {
  const before = implausible.times
  for (let row = 0; row < rows; row++) {
    const value = values[row]! * factor + shift
    if (value >= least && value <= most) values[row] = value
    else {
      if (!Number.isNaN(value)) countOne(implausible, lines[row]!)
      values[row] = NaN
    }
  }
  return implausible.times > before
}

/** A window of time means nothing where time runs backwards. */
export function windowProblem({ fromS, toS }: Window, line: number): LogProblem | undefined {
  return fromS === undefined && toS === undefined ? undefined : { line, message: say('time runs backwards here, so that a window of time means nothing; cut the log into its parts first') }
}
