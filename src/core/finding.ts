import type { Range, TextChange } from './text'

export type Severity = 'error' | 'warning' | 'info'

/** A repair that a finding carries: what it does, in words, and the changes that do it. */
export interface Fix {
  title: string
  changes: TextChange[]
}

/** The cell of the notebook that a finding is about: an entry's key and a row's key. */
export interface Place {
  entry?: string
  row?: string
}

/**
 * Something the notebook says about itself. The editor, the grid and the command line show the same findings.
 * `code` is a speaking name such as `legs-differ`; `range` is where it stands in the text.
 */
export interface Finding {
  code: string
  severity: Severity
  message: string
  range: Range
  place?: Place
  fixes?: Fix[]
}
