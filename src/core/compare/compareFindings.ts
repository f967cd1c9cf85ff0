import type { Finding } from '../finding'
import { checkNotebook } from '../rules/checkNotebook'
import { lineOf, lineStarts } from '../text'
import type { ComparedFinding, FindingsCompared, StateRef } from './comparison'

/** The findings of a side, as they are known already or as they are found now. */
export function findingsOf({ notebook, findings }: StateRef): readonly Finding[] {
  return findings ?? checkNotebook(notebook)
}

/**
 * What is found about the right state and not about the left, and the other way round. Findings are the same when they
 * have the same code about the same row; numbers in their words may differ. Those about other entries belong to neither.
 */
export function compareFindings(left: StateRef, right: StateRef): FindingsCompared {
  const bothInOne = left.notebook === right.notebook
  const of = (side: StateRef) => findingsOf(side).filter(({ place }) => (place?.entry === undefined ? !bothInOne : place.entry === side.entry?.key))
  return differenceOf(placed(left, of(left)), placed(right, of(right)), ({ code, row, entry, message }) => `${code}\n${row ?? ''}${entry === undefined ? `\n${message}` : ''}`)
}

/** All findings of one notebook against all of another version of it, each told by its code, entry and row. */
export function compareAllFindings(before: StateRef, after: StateRef): FindingsCompared {
  return differenceOf(placed(before, findingsOf(before)), placed(after, findingsOf(after)), ({ code, row, entry, message }) => [code, entry ?? message, row ?? ''].join('\n'))
}

/** What is more often in one list than in the other, told by a key. */
function differenceOf(left: ComparedFinding[], right: ComparedFinding[], keyOf: (finding: ComparedFinding) => string): FindingsCompared {
  const without = (all: ComparedFinding[], others: ComparedFinding[]) => {
    const count = new Map<string, number>()
    for (const other of others) count.set(keyOf(other), (count.get(keyOf(other)) ?? 0) + 1)
    return all.filter((finding) => {
      const left = count.get(keyOf(finding)) ?? 0
      count.set(keyOf(finding), left - 1)
      return left <= 0
    })
  }
  return { new: without(right, left), gone: without(left, right) }
}

function placed({ notebook }: StateRef, findings: readonly Finding[]): ComparedFinding[] {
  const starts = lineStarts(notebook.text)
  return findings.map(({ code, severity, message, range, place }) => ({
    code, severity, message, line: lineOf(starts, range.start) + 1,
    ...(place?.entry === undefined ? {} : { entry: place.entry }), ...(place?.row === undefined ? {} : { row: place.row }),
  }))
}
