import type { LogReport } from './analyseLog'
import type { EndName } from './mapping/mapping'
import type { LogStatistics } from './statistics/logStatistics'
import type { LogTrace } from './statistics/trace'

/** What is known of a log that an entry names. `stamp` is another one whenever anything else is. */
export type LogAtHand = ReadingLog | ReadLog | UnreadLog

interface ReadingLog {
  state: 'reading'
  stamp: string
}

export interface ReadLog extends LogReport {
  state: 'read'
  stamp: string
  statistics: LogStatistics
  /** A stretch of it that was looked at more closely, or is just being read for that. */
  closer?: CloserLook | 'reading'
}

/** Both ends over a stretch of a log, in more pieces than the drawing of the whole has for it. */
export type CloserLook = Partial<Record<EndName, LogTrace>>

export interface UnreadLog {
  state: 'unread'
  stamp: string
  /** What is wrong and what to do, as a sentence's end: 'there is no such file'. */
  why: string
  /** There is no such file, which on another machine there may be, or the notebook does not say how to read it: no fault of the log. */
  absent?: true
}

/** By the path that entries name, as `readLogPath` reads it. */
export type LogsAtHand = ReadonlyMap<string, LogAtHand>
