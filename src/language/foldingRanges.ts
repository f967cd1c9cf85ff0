import { lineEnd } from '../core/text'

/** Lines that fold under the first of them, as offsets in the first and the last one. */
export interface Fold {
  start: number
  end: number
  kind?: 'comment'
}

interface Open {
  start: number
  end: number
  indent: number
  dash: boolean
}

interface Line {
  start: number
  end: number
  indent: number
  comment: boolean
  dash: boolean
  /** Opens a `|` or `>` text. */
  opensText: boolean
}

/**
 * What folds: sections, adjusters, entries, groups in them, and comments of several lines. Goes by the indentation
 * alone, so that nothing unfolds while a text is half typed.
 */
export function foldingRanges({ text }: { text: string }): Fold[] {
  const folds: Fold[] = []
  const open: Open[] = []
  let textIndent: number | undefined
  const close = (until: (each: Open) => boolean) => {
    while (open.length > 0 && until(open.at(-1)!)) {
      const { start, end } = open.pop()!
      if (end > start) folds.push({ start, end })
    }
  }
  const lines = linesOf(text)
  for (const line of lines) {
    const isText = textIndent !== undefined && line.indent > textIndent
    if (!isText && !line.comment) {
      textIndent = line.opensText ? line.indent : undefined
      close(({ indent, dash }) => indent > line.indent || (indent === line.indent && (dash || !line.dash)))
    }
    for (const each of open) if (each.indent < line.indent || (line.dash && !each.dash && each.indent === line.indent)) each.end = line.start
    if (!isText && !line.comment) open.push({ start: line.start, end: line.start, indent: line.indent, dash: line.dash })
  }
  close(() => true)
  return [...folds, ...commentFolds(lines)].sort((a, b) => a.start - b.start)
}

/** The lines that are not blank. */
function linesOf(text: string): Line[] {
  const lines: Line[] = []
  for (let start = 0; start < text.length;) {
    const newline = text.indexOf('\n', start)
    const end = newline < 0 ? text.length : newline
    let at = start
    while (at < end && text[at] === ' ') at++
    if (at < end && text.slice(at, end).trim() !== '') {
      const words = text.slice(at, lineEnd(text, at))
      lines.push({ start, end, indent: at - start, comment: words.startsWith('#'), dash: /^-(\s|$)/.test(words), opensText: /(:|^-)\s+[|>][-+\d]*\s*(#[^]*)?$/.test(words) })
    }
    start = end + 1
  }
  return lines
}

/** Comments on lines that follow one another without a blank one. */
function commentFolds(lines: readonly Line[]): Fold[] {
  const folds: Fold[] = []
  let first: Line | undefined
  let last: Line | undefined
  const end = () => {
    if (first && last && last !== first) folds.push({ start: first.start, end: last.start, kind: 'comment' })
  }
  for (const line of lines) {
    const follows = last !== undefined && last.end + 1 === line.start && last.indent === line.indent
    if (line.comment && first && follows) last = line
    else {
      end()
      first = last = line.comment ? line : undefined
    }
  }
  end()
  return folds
}
