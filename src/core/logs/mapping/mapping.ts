import type { LeverageFacts } from '../../compute/leverage/leverage'

/** Which column of a log is what, as `machine.logger` of a notebook says it. A column by its heading, or its place from 1. */
export interface LoggerMapping {
  time?: { column: ColumnName; unit?: TimeUnit }
  /** Samples per s, where no column holds the time. */
  rateHz?: number
  front?: ChannelMapping
  rear?: ChannelMapping
  brake?: { column: ColumnName; on?: number }
  lap?: { column: ColumnName }
}

export type ColumnName = string | number
export type TimeUnit = 's' | 'ms' | 'us' | 'clock'
export type EndName = 'front' | 'rear'

export const timeUnits: readonly TimeUnit[] = ['s', 'ms', 'us', 'clock']

/** travel in mm = ± scale · (reading − offset), with − where the reading rises as the suspension extends. */
export interface ChannelMapping {
  column: ColumnName
  /** A length, `%` of the travel, or the sensor's own such as `V`, which needs a scale. mm when left out. */
  unit?: string
  /** mm for one of the column's unit. */
  scale?: number
  /** What the column reads with the end fully extended, in its own unit. */
  offset?: number
  /** What a rising reading means. */
  direction?: 'compression' | 'extension'
  /** Where it is measured. At the damper, the leverage of the machine makes wheel travel of it. */
  at?: 'wheel' | 'damper'
}

/** What has to be known about an end to make positions of its readings. */
export interface EndFacts {
  travelMm?: number
  leverage?: LeverageFacts
}
