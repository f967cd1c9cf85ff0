import type { Fix, Severity } from '../finding'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Range } from '../text'

/** What a rule reports; the engine adds its code, its severity and the entry. */
export interface Report {
  message: string
  range: Range
  /** The row of the grid it is about. */
  row?: string
  /** Only where it differs from the rule's own. */
  severity?: Severity
  fixes?: Fix[]
}

interface Description {
  /** Its speaking name, the same in file, editor and command line. */
  code: string
  severity: Severity
  /** When it speaks, in one line. */
  says: string
  /** Why the trade minds. */
  why: string
}

/** A rule that looks at one entry and what it comes from. */
export interface EntryRule extends Description {
  checkEntry: (entry: Entry, notebook: Notebook) => Report[]
}

/** A rule that looks at the notebook as a whole. */
export interface NotebookRule extends Description {
  checkNotebook: (notebook: Notebook) => Report[]
}

export type Rule = EntryRule | NotebookRule
