import { readLogPath } from '../notation/logPath'
import { writeInstead } from '../notebook/edits/writeInstead'
import { fieldNode } from '../notebook/fields'
import type { EntryRule } from './rule'

export const logOutside: EntryRule = {
  code: 'log-outside',
  severity: 'error',
  says: 'The path of a log that leads out of the notebook’s folder, or holds on one machine only.',
  why: 'A notebook travels with its logs. A path with a drive, a root or `..` is another file elsewhere, or none, and such a file is not opened.',
  checkEntry: (entry, { text }) => {
    const node = fieldNode(entry, 'ride.log')
    if (!node || node.text.trim() === '') return []
    const { problem, suggestion } = { suggestion: undefined, ...readLogPath(node.text) }
    if (problem === undefined) return []
    return [{ message: `‘${node.text.trim()}’ ${problem}${suggestion === undefined ? '' : `: ${suggestion}`}`, range: node.range, row: 'ride.log', fixes: suggestion === undefined ? [] : writeInstead(text, node, suggestion) }]
  },
}
