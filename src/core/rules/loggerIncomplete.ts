import { loggerOf, logFactsOf } from '../derived/loggerOf'
import { resolveMapping } from '../logs/mapping/resolveMapping'
import { pairOf, nodeAt } from '../notebook/tree'
import type { NotebookRule } from './rule'

export const loggerIncomplete: NotebookRule = {
  code: 'logger-incomplete',
  severity: 'warning',
  says: 'What `logger` says is not enough to read a log: no time and no rate, a sensor without a scale, one column for two things.',
  why: 'A log is read only where it is known what its numbers mean; nothing is guessed in its place.',
  checkNotebook: (notebook) => {
    const mapping = loggerOf(notebook)
    const machine = nodeAt(notebook.root, ['machine'])
    const pair = machine && pairOf(machine, 'logger')
    if (!mapping || !pair) return []
    // The columns of a file are not known here: each that is named is taken to be there.
    const named = [mapping.time, mapping.front, mapping.rear, mapping.brake, mapping.lap].flatMap((each) => (each ? [String(each.column)] : []))
    const resolved = resolveMapping(mapping, { columns: [...new Set(named)].map((name) => ({ name })) }, logFactsOf(notebook))
    return 'problems' in resolved ? resolved.problems.map((message) => ({ message: `logger: ${message}`, range: pair.key.range })) : []
  },
}
