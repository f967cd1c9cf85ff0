import { say } from '../words/say'

/** Why a log, or a part of it, cannot be worked with: what is wrong and what to do, and the line of the file it was seen in. */
export interface LogProblem {
  /** Counted from 1, as editors do. */
  line?: number
  message: string
}

export function isLogProblem(value: object): value is LogProblem {
  return 'message' in value
}

/** The problem as one sentence. @example told({ line: 3, message: 'no numbers' }) // 'line 3: no numbers' */
export function told({ line, message }: LogProblem): string {
  return line === undefined ? message : say`line ${line}: ${message}`
}
