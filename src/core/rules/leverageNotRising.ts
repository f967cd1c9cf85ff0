import { readLeverage } from '../compute/leverage/leverage'
import { isMissing } from '../compute/working/result'
import { leverageOf } from '../derived/springsFitted'
import { nodeAt } from '../notebook/tree'
import { say } from '../words/say'
import type { NotebookRule } from './rule'

export const leverageNotRising: NotebookRule = {
  code: 'leverage-not-rising',
  severity: 'error',
  says: 'A measured leverage whose wheel or shock travel does not rise from row to row.',
  why: 'As the wheel goes up the shock goes in. A row that says otherwise was misread or stands in the wrong place, and no motion ratio can be taken from it.',
  checkNotebook: (notebook) => {
    const facts = leverageOf(notebook)
    const list = nodeAt(notebook.root, ['machine', 'rear', 'leverage'])
    if (!facts || !('table' in facts) || list?.kind !== 'list') return []
    if (!facts.table.flat().every(Number.isFinite) || !isMissing(readLeverage(facts))) return []
    const { table } = facts
    const row = table.findIndex(([wheel, shock], at) => at > 0 && (wheel <= table[at - 1]![0] || shock <= table[at - 1]![1]))
    return row < 0 ? [] : [{ message: say`leverage: [${table[row]!.join(', ')}] does not rise from [${table[row - 1]!.join(', ')}]; wheel travel first, then shock travel, from fully extended`, range: list.items[row]!.range }]
  },
}
