import type { Finding } from '../finding'
import type { Notebook } from '../notebook/notebook'
import { readNotebook } from '../notebook/readNotebook'
import { checkNotebook } from '../rules/checkNotebook'
import { lineAndColumn } from '../text'
import type { Conflict } from './piece'

/** The errors of a merged text that neither side had: what each did was right by itself, and is not together. */
export function newErrors(text: string, ours: Notebook, theirs: Notebook): Conflict[] {
  const known = new Set([...errorsIn(ours), ...errorsIn(theirs)].map(nameOf))
  const merged = errorsIn(readNotebook(text))
  return merged.filter((finding) => !known.has(nameOf(finding))).map(({ message, range }) => ({
    line: lineAndColumn(text, range.start).line + 1, message: `an error that neither side had: ${message}`,
  }))
}

function errorsIn(notebook: Notebook): Finding[] {
  return checkNotebook(notebook).filter(({ severity }) => severity === 'error')
}

function nameOf({ code, place, message }: Finding): string {
  return JSON.stringify([code, place?.entry, place?.row, place?.row ? '' : message])
}
