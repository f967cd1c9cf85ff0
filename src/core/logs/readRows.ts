import type { LogProblem } from './problem'
import type { Dialect } from './reading/dialect'
import { readTable } from './reading/readTable'
import type { Tally } from './reading/tally'
import { RowPipe, type PipeEnd, type PipeFacts, type RowSink } from './rowPipe'

/** What there is to read, and how; plain data, for it may go to another thread. */
export interface RowsTask extends PipeFacts {
  dialect: Dialect
}

/** How the reading ended, as plain data. */
export interface RowsEnd {
  tally: Tally
  pipe: PipeEnd
  problem?: LogProblem
}

export interface RowsReader {
  /** Takes the next bytes of the file; false where there is no need of more. The bytes may be overwritten afterwards. */
  feed: (chunk: Uint8Array) => boolean
  end: () => RowsEnd
}

/** Rows of use from the bytes of a file as they come: half of all the work on a log. */
export function readRows({ dialect, ...facts }: RowsTask, sink: RowSink): RowsReader {
  const pipe = new RowPipe(facts, sink)
  const reader = readTable(dialect, pipe.wanted, (block) => {
    pipe.push(block)
    return pipe.wantsMore
  })
  return {
    feed(chunk) {
      reader.feed(chunk)
      return !reader.problem() && pipe.wantsMore
    },
    end() {
      reader.end()
      const problem = reader.problem()
      return { tally: reader.tally, pipe: pipe.end(), ...(problem ? { problem } : {}) }
    },
  }
}
