import type { Finding, Severity } from '../core/finding'
import { unwatched } from '../core/notebook/content'
import { readNotebook } from '../core/notebook/readNotebook'
import { checkNotebook } from '../core/rules/checkNotebook'
import { lineOf, lineStarts, type Range } from '../core/text'

/** A notebook that was checked: its findings, and its text to place them in. */
export interface CheckedFile {
  path: string
  text: string
  /** Where its lines begin. */
  starts: readonly number[]
  findings: readonly Finding[]
}

/** A place as people count: lines and columns from 1, columns in UTF-16 units, the end exclusive. */
export interface TextRegion {
  line: number
  column: number
  endLine: number
  endColumn: number
}

export function checkFile(path: string, text: string, notebook = readNotebook(text)): CheckedFile {
  return { path, text, starts: lineStarts(text), findings: unwatched(() => checkNotebook(notebook)) }
}

/** Where a range of a file stands. A byte order mark belongs to the file and takes no column. */
export function regionOf({ text, starts }: CheckedFile, { start, end }: Range): TextRegion {
  const place = (offset: number) => {
    const line = lineOf(starts, offset)
    const before = line === 0 && offset > 0 && text.startsWith('\ufeff') ? 1 : 0
    return { line: line + 1, column: offset - starts[line]! - before + 1 }
  }
  const [from, to] = [place(start), place(end)]
  return { line: from.line, column: from.column, endLine: to.line, endColumn: to.column }
}

/** How many findings there are of each severity. */
export function countFindings(files: readonly CheckedFile[]): Record<'errors' | 'warnings' | 'infos', number> {
  const all = files.flatMap(({ findings }) => findings)
  const of = (severity: Severity) => all.filter((finding) => finding.severity === severity).length
  return { errors: of('error'), warnings: of('warning'), infos: of('info') }
}
