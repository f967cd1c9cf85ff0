import type { Notebook } from '../../core/notebook/notebook'
import type { Range } from '../../core/text'
import { occurrenceAt, sameName } from './occurrences'

/** Where a link leads: from the name at the cursor to where that is defined. */
export interface Link {
  from: Range
  to: Range[]
}

/** From a setting, a remark or an acceptance to its adjuster; from `from` or an acceptance to its entry. */
export function definitionAt(notebook: Notebook, offset: number): Link | undefined {
  const at = occurrenceAt(notebook, offset)
  const to = at ? sameName(notebook, at).filter(({ role }) => role === 'definition').map(({ range }) => range) : []
  return at && to.length > 0 ? { from: at.range, to } : undefined
}

/** Every place that names what the cursor is on, its definition only if asked for. */
export function referencesAt(notebook: Notebook, offset: number, withDefinition: boolean): Range[] {
  return highlightsAt(notebook, offset).filter(({ role }) => withDefinition || role === 'reference').map(({ range }) => range)
}

/** A place to be highlighted, and whether it is where the thing is defined. */
export interface Highlight {
  range: Range
  role: 'definition' | 'reference'
}

/** Every place that names what the cursor is on. */
export function highlightsAt(notebook: Notebook, offset: number): Highlight[] {
  const at = occurrenceAt(notebook, offset)
  return at ? sameName(notebook, at).map(({ range, role }) => ({ range, role })) : []
}
