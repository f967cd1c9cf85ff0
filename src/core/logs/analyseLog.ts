import type { PlaneGeometry } from '../compute/geometry/attitude'
import { say } from '../words/say'
import type { EndFacts, EndName, LoggerMapping } from './mapping/mapping'
import { proposeMapping, type ProposedMapping } from './mapping/proposeMapping'
import { resolveMapping, type Resolved } from './mapping/resolveMapping'
import { notesOf, ofColumns } from './notes'
import { usualOptions, type LogOptions } from './options'
import { isLogProblem, type LogProblem } from './problem'
import { detectDialect, headBytes } from './reading/detectDialect'
import type { Dialect } from './reading/dialect'
import { readTable } from './reading/readTable'
import { readRows, type RowsEnd, type RowsTask } from './readRows'
import { emptyWindow, type RowSink } from './rowPipe'
import type { Window } from './series/rows'
import { LogRun } from './statistics/logRun'
import type { LogStatistics } from './statistics/logStatistics'

/** What is asked of a log. All of it may be left out. */
export interface LogRequest {
  /** Which column is what; proposed from headings and numbers where it is left out. */
  mapping?: LoggerMapping
  facts?: Partial<Record<EndName, EndFacts>>
  /** The machine with both ends fully extended, for the attitude. */
  geometry?: PlaneGeometry
  options?: Partial<LogOptions>
  window?: Window
}

/** What a log said: statistics, or the problem that kept them from being made; and notes on all that was mended or left out. */
export interface LogReport {
  dialect?: Dialect
  mapping?: LoggerMapping
  /** Where the mapping was not given. */
  proposed?: ProposedMapping
  statistics?: LogStatistics
  notes: string[]
  problem?: LogProblem
}

export interface LogAnalysis {
  /** Takes the next bytes of the file; false where there is no need of more. The bytes may be overwritten afterwards. */
  feed: (chunk: Uint8Array) => boolean
  end: () => LogReport
}

/**
 * Statistics of a logger's file from its bytes as they come, in memory that does not grow with the file.
 *
 * Nothing is guessed without a word: what was found, taken for what, mended or left out stands in the report.
 * @example
 * const analysis = analyseLog({ mapping, facts: { front: { travelMm: 120 } } })
 * for (const chunk of chunks) analysis.feed(chunk)
 * const { statistics, notes, problem } = analysis.end()
 */
export function analyseLog(request: LogRequest = {}): LogAnalysis {
  const head = new Uint8Array(headBytes)
  let held = 0
  let begun: Begun | undefined
  const begin = (whole: boolean) => {
    begun ??= beginReading(head.subarray(0, held), whole, request)
    return begun
  }
  return {
    feed(chunk) {
      if (begun) return begun.feed(chunk)
      const taken = Math.min(chunk.length, headBytes - held)
      head.set(chunk.subarray(0, taken), held)
      held += taken
      if (held < headBytes) return true
      const reading = begin(false)
      return reading.feed(head) && (taken === chunk.length || reading.feed(chunk.subarray(taken)))
    },
    end() {
      if (begun) return begun.end()
      const reading = begin(true)
      reading.feed(head.subarray(0, held))
      return reading.end()
    },
  }
}

type Begun = LogAnalysis

const ended = (report: LogReport): Begun => ({ feed: () => false, end: () => report })

function beginReading(head: Uint8Array, whole: boolean, request: LogRequest): Begun {
  const plan = planLog(head, whole, request)
  if (!('sink' in plan)) return ended(plan)
  const reader = readRows(plan.task, plan.sink)
  return { feed: reader.feed, end: () => plan.end(reader.end()) }
}

/** What is to be read of a log, for whoever reads its rows: on another thread, say. */
export interface LogPlan {
  /** What `readRows` is to be told. */
  task: RowsTask
  /** Where its rows go. */
  sink: RowSink
  end: (rows: RowsEnd) => LogReport
}

/**
 * With the first `headBytes` of a file at hand: how the table is written, which column is what, and what to do with its
 * rows; or the report that says why there is nothing to do. `analyseLog` does all of it where one thread is enough.
 */
export function planLog(head: Uint8Array, whole: boolean, request: LogRequest = {}): LogPlan | LogReport {
  const dialect = detectDialect(head, whole)
  if (isLogProblem(dialect)) return { notes: [], problem: dialect }
  const proposed = request.mapping ? undefined : proposeMapping(dialect, firstRows(head, dialect))
  const mapping = request.mapping ?? proposed!.mapping
  const known = { dialect, mapping, ...(proposed ? { proposed } : {}) }
  const resolved = resolveMapping(mapping, dialect, request.facts ?? {})
  if ('problems' in resolved) return { ...known, notes: [], problem: { message: resolved.problems.join('; ') } }
  const { geometry, window = {} } = request
  const options = { ...usualOptions, ...request.options }
  let run: LogRun | undefined
  return {
    task: { dialect, resolved: asPlainData(resolved), options, window },
    sink: {
      begin: (start) => run = new LogRun({ resolved, options, ...start, ...(geometry ? { geometry } : {}) }),
      take: (times, channels, rows, holes) => run!.even.push(times, channels, rows, holes),
    },
    end({ tally, pipe, problem = pipe.problem }) {
      const statistics = problem ? undefined : run?.finish(tally.rows)
      const notes = [...ofColumns(dialect), ...notesOf({ tally, pipe, run }, resolved)]
      if (!statistics) return { ...known, notes, problem: problem ?? emptyWindow(window, pipe) ?? { message: say('no row of it can be used') } }
      return { ...known, statistics: Object.keys(window).length > 0 ? { ...statistics, window } : statistics, notes }
    },
  }
}

/** Without the functions that lead to the wheel, which is gone to after the rows are read. */
function asPlainData({ ends, ...others }: Resolved): Resolved {
  return { ...others, ends: Object.fromEntries(Object.entries(ends).map(([end, { toWheel: _, ...plain }]) => [end, plain])) }
}

/** Some of the first rows in all their columns, to propose a mapping from. */
export function firstRows(head: Uint8Array, dialect: Dialect): number[][] {
  const rows: number[][] = []
  const reader = readTable(dialect, dialect.columns.map((_, column) => ({ column })), (block) => {
    for (let row = 0; row < Math.min(200, block.rows) && rows.length < 200; row++) rows.push(block.slots.map((slot) => slot[row]!))
    return rows.length < 200
  })
  reader.feed(head)
  reader.end()
  return rows
}
