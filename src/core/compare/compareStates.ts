import { fileUnits } from '../notation/displayUnits'
import { phrase, say } from '../words/say'
import { compareFindings } from './compareFindings'
import { compareRows } from './compareRows'
import type { CompareOptions, CompareRow, Comparison, StateRef } from './comparison'
import { entriesBetween } from './entriesBetween'
import { expectedSags } from './expectedSags'
import { areOneMachine } from './oneMachine'
import { sideOf, stateOf, withEntry } from './sides'

/**
 * Two states of one machine, or of two, side by side. A side that does not parse, or has no entry, is told as trouble
 * and the other one is shown alone.
 *
 * @example compareStates({ notebook, entry: baseline, file }, { notebook, file }) // the baseline against the last entry
 */
export function compareStates(from: StateRef, to: StateRef, { oneMachine: known, units = fileUnits }: CompareOptions = {}): Comparison {
  const [left, right] = [withEntry(from), withEntry(to)]
  const [a, b] = [stateOf(left), stateOf(right)]
  const oneMachine = known ?? areOneMachine(left.notebook, right.notebook)
  const groups = compareRows(a, b, { oneMachine, units })
  const rows = groups.flatMap((group) => group.rows)
  return {
    left: sideOf(left), right: sideOf(right), oneMachine, groups,
    notes: a && b && !oneMachine ? [say(twoMachines)] : [],
    changes: countChanges(rows),
    expected: a && b && oneMachine ? expectedSags(a, b, units) : [],
    between: a && b && oneMachine ? entriesBetween(a, b) : [],
    findings: a && b ? compareFindings(left, right, rows) : { new: [], gone: [], notReadAgain: [], foundBefore: [] },
  }
}

const twoMachines = phrase('These are two machines. A click of one is no click of the other, so positions are compared by their share of the range alone; pressures, spring rates and computed numbers are compared as they are.')

/** Both legs of a pair count as one change. */
function countChanges(rows: readonly CompareRow[]): number {
  return new Set(rows.filter(({ kind, different }) => kind === 'setting' && different).map(({ key }) => key.replace(/\/(left|right)$/, ''))).size
}
