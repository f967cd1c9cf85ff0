import { writeInstead } from '../notebook/edits/writeInstead'
import { factIn } from '../notebook/machine'
import { scalarAt } from '../notebook/tree'
import { say } from '../words/say'
import type { EntryRule } from './rule'

/** A bare number that is meant in mm would be ten metres and more. */
const metresInMm = 10_000

const bareNumber = /^[+\-−]?[\d.]+$/

export const altitudeWithoutUnit: EntryRule = {
  code: 'altitude-without-unit',
  severity: 'warning',
  says: 'An altitude is written without its unit, so that it counts in mm.',
  why: 'A bare number is mm, as everywhere. Pressures are computed with the thinner air of an altitude, and a few hundred mm make none thinner.',
  checkEntry: (entry, notebook) => {
    const node = scalarAt(entry.node, ['conditions', 'altitude'])
    const mm = factIn(entry.node, ['conditions', 'altitude'], 'length')?.base ?? 0
    if (!node || mm === 0 || Math.abs(mm) >= metresInMm || !bareNumber.test(node.text.trim())) return []
    const meant = `${node.text.trim()} m`
    return [{ message: say`an altitude of ${node.text} counts in mm: write its unit, such as ${meant}`, range: node.range, row: 'conditions.altitude', fixes: writeInstead(notebook.text, node, meant) }]
  },
}
