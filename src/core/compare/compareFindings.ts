import type { Finding } from '../finding'
import { fieldNode } from '../notebook/fields'
import type { Entry } from '../notebook/notebook'
import { checkNotebook } from '../rules/checkNotebook'
import { lineOf, lineStarts } from '../text'
import type { ComparedFinding, CompareRow, FindingsCompared, StateRef } from './comparison'
import { lastKnown } from './lastKnown'

/** The findings of a side, as they are known already or as they are found now. */
export function findingsOf({ notebook, findings }: StateRef): readonly Finding[] {
  return findings ?? checkNotebook(notebook)
}

/**
 * What is found about the right state and not about the left, and the other way round. Findings are the same when they
 * have the same code about the same row; numbers in their words may differ. Those about other entries belong to neither.
 * What is about something that was not measured again is neither gone nor still there; what was found when it was last
 * measured is not new.
 */
export function compareFindings(left: StateRef, right: StateRef, rows: readonly CompareRow[]): FindingsCompared {
  const bothInOne = left.notebook === right.notebook
  const of = (side: StateRef) => findingsOf(side).filter((finding) => (finding.place?.entry === undefined ? !bothInOne : side.entry !== undefined && isOfState(finding, side.entry, side)))
  const { new: fresh, gone } = differenceOf(placed(left, of(left)), placed(right, of(right)), ({ code, row, entry, message }) => `${code}\n${row ?? ''}${entry === undefined ? `\n${message}` : ''}`)
  const alone = (side: 'left' | 'right') => new Set(rows.filter(({ kind, onlyIn }) => kind !== 'setting' && onlyIn === side).map(({ key }) => key))
  const [leftAlone, rightAlone] = [alone('left'), alone('right')]
  const isUnread = ({ row }: ComparedFinding) => row !== undefined && leftAlone.has(row)
  const wasFound = (finding: ComparedFinding) => finding.row !== undefined && rightAlone.has(finding.row) && foundWhenLastRead(left, finding.code, finding.row)
  return {
    new: fresh.filter((finding) => !wasFound(finding)), foundBefore: fresh.filter(wasFound),
    gone: gone.filter((finding) => !isUnread(finding)), notReadAgain: gone.filter(isUnread),
  }
}

/** Whether a finding about something measured stood when that was last measured on the line of a state that did not. */
function foundWhenLastRead(side: StateRef, code: string, row: string): boolean {
  const last = side.entry && lastKnown(side.entry, (entry) => fieldNode(entry, row))
  return last !== undefined && findingsOf(side).some(({ code: each, place }) => each === code && place?.row === row && place.entry === last.entry.key)
}

/** All findings of one notebook against all of another version of it, each told by its code, entry and row. */
export function compareAllFindings(before: StateRef, after: StateRef): FindingsCompared {
  const difference = differenceOf(placed(before, findingsOf(before)), placed(after, findingsOf(after)), ({ code, row, entry, message }) => [code, entry ?? message, row ?? ''].join('\n'))
  return { ...difference, notReadAgain: [], foundBefore: [] }
}

/** Told of the moment something was found, and not of how it stands from then on. */
const ofTheMoment = new Set(['adjuster-crept'])
/** Told of both legs at once, so that they hold while neither has moved. */
const ofBothLegs = new Set(['legs-differ', 'fork-height-uneven'])

/** Whether a finding is about this entry, or about a position that an earlier one set and that still stands. */
export function isOfState({ code, place }: Finding, entry: Entry, { notebook }: Pick<StateRef, 'notebook'>): boolean {
  if (place?.entry === entry.key) return true
  const slot = place?.row?.startsWith('settings/') && !ofTheMoment.has(code) ? place.row.slice('settings/'.length) : undefined
  const then = slot === undefined ? undefined : notebook.entries.find(({ key }) => key === place?.entry)
  if (slot === undefined || !then) return false
  const stillStands = (each: string) => then.state.has(each) && then.state.get(each)!.setting === entry.state.get(each)?.setting
  const other = ofBothLegs.has(code) ? slot.replace(/(left|right)$/, (leg) => (leg === 'left' ? 'right' : 'left')) : slot
  return entry.state.get(slot)?.setIn === then && stillStands(slot) && stillStands(other)
}

/** What is more often in one list than in the other, told by a key. */
function differenceOf(left: ComparedFinding[], right: ComparedFinding[], keyOf: (finding: ComparedFinding) => string): Pick<FindingsCompared, 'new' | 'gone'> {
  const without = (all: ComparedFinding[], others: ComparedFinding[]) => {
    const count = new Map<string, number>()
    for (const other of others) count.set(keyOf(other), (count.get(keyOf(other)) ?? 0) + 1)
    return all.filter((finding) => {
      const unmatched = count.get(keyOf(finding)) ?? 0
      count.set(keyOf(finding), unmatched - 1)
      return unmatched <= 0
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
