import type { LogReport } from './analyseLog'
import type { LogStatistics } from './statistics/logStatistics'

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
}

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
