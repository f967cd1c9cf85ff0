import type { Adjuster } from '../../core/adjusters/adjuster'
import type { Finding } from '../../core/finding'
import type { Entry, Notebook } from '../../core/notebook/notebook'
import type { Range } from '../../core/text'
import type { Cursor } from '../cursor/cursor'

/** One thing that can be typed at a cursor. */
export interface Completion {
  label: string
  kind: 'key' | 'adjuster' | 'leg' | 'entry' | 'position' | 'choice' | 'unit' | 'rule' | 'shape'
  /** A few words beside the label. */
  detail?: string
  /** A sentence or two, as Markdown. */
  about?: string
  /** What is inserted; with `snippet`, in the editor's snippet syntax. */
  insert: string
  snippet?: boolean
  /** What is typed is held against this instead of the label. */
  filter?: string
  /** Once inserted, more can be completed. */
  again?: boolean
  /** Only what the schema says, which a YAML extension may offer as well. */
  fromSchema?: boolean
}

/** What can be typed at a cursor, best first, and the text that it takes the place of. */
export interface Completions {
  range: Range
  items: Completion[]
}

/** What the sources of completions have to go by. */
export interface Asked {
  notebook: Notebook
  cursor: Cursor
  /** The path with `*` for a place in a list, as the schema wants it. */
  path: readonly string[]
  adjusters: ReadonlyMap<string, Adjuster>
  /** The entry the cursor stands in. */
  entry?: Entry
  findings: readonly Finding[]
}

/** Takes the meaning that snippets give to some characters away. */
export function plainSnippet(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&')
}

/** `name: `, or the name alone where a colon stands behind it. */
export function keyText(name: string, { hasColon }: Cursor): string {
  return hasColon ? name : `${name}: `
}
