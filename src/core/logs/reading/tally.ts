/** How often something was met, and the line where it was met first. */
export interface Count {
  times: number
  firstLine?: number
}

/** What a reader met that was not a plain number in its place. Nothing of it is guessed at; everything is counted. */
export interface Tally {
  /** Rows that were read. */
  rows: number
  /** Lines with another number of fields; left out. */
  ragged: Count
  /** Remarks and blank lines among the data. */
  remarks: number
  /** A last line without a line end; left out, for nobody can tell whether it was cut short. */
  cutLastLine: boolean
  /** By slot: empty fields, words such as NaN. */
  missing: Count[]
  /** By slot: words and other things that are no number. */
  notNumbers: Count[]
  /** By slot: infinities and numbers too large for any. */
  infinite: Count[]
  /** By slot: numbers with the other decimal mark. */
  otherMark: Count[]
}

export function emptyTally(slots: number): Tally {
  const none = () => Array.from({ length: slots }, (): Count => ({ times: 0 }))
  return { rows: 0, ragged: { times: 0 }, remarks: 0, cutLastLine: false, missing: none(), notNumbers: none(), infinite: none(), otherMark: none() }
}

export function countOne(count: Count, line: number): void {
  count.times++
  count.firstLine ??= line
}
