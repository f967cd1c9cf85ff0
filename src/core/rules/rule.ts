import type { Fix, Severity } from '../finding'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Range } from '../text'

/** What a rule reports; the engine adds its code, its severity and, where the rule looks at one entry, that entry. */
export interface Report {
  message: string
  range: Range
  /** The entry it is about, where a rule for the whole notebook knows one. */
  entry?: Entry
  /** The row of the grid it is about. */
  row?: string
  /** Only where it differs from the rule's own. */
  severity?: Severity
  fixes?: Fix[]
}

/** What the README tells about a finding. */
export interface Description {
  /** Its speaking name, the same in file, editor and command line. */
  code: string
  severity: Severity
  /** When it speaks, in one line. */
  says: string
  /** Why the trade minds. */
  why: string
}

/** A rule that looks at one entry, what it comes from and the facts of the machine; at nothing else, for it is not asked again while these say the same. */
export interface EntryRule extends Description {
  checkEntry: (entry: Entry, notebook: Notebook) => Report[]
  /** What it has to say of the rest of the notebook. */
  checkNotebook?: NotebookRule['checkNotebook']
}

/** A rule that looks at the notebook as a whole. `codes` are those that a notebook may set or accept. */
export interface NotebookRule extends Description {
  checkNotebook: (notebook: Notebook, codes: ReadonlySet<string>) => Report[]
}

export type Rule = EntryRule | NotebookRule
