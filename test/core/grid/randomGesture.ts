import type { Gesture } from '../../../src/core/grid/gesture'
import { rowsOf } from '../../../src/core/grid/rows'
import type { Notebook } from '../../../src/core/notebook/notebook'
import type { Choices } from './choices'

const pieces = [
  '4 out', '3', ' 7 ', '1 1/2 turns in', '1.0', "it's", '"', 'a: b', '#', ' # c', '- x', ',', '[', '}', '\n', '\n\n', '\t', ' ', '*', '&', '!', '|', '>', '%', '@', '\\', 'ü', '日本', '𝄞', '\u00a0', '\u2028', '\u0085',
  '---', '...', '?', ':', 'null', '~', 'true', '0x1F', '\r\n', '\0', '\ud800', '\ufeff', 'x'.repeat(300), '__proto__', '<<', '=', '`', "'", '{left: 1}', '*a0', '012', '.inf', '-', "''",
]

/** What a person may type, pleasant or not. */
export function randomText(choices: Choices): string {
  return Array.from({ length: 1 + choices.below(4) }, () => choices.of(pieces)).join(choices.of(['', ' ']))
}

/** A gesture on a place that the notebook has or, now and then, has not. */
export function randomGesture(notebook: Notebook, choices: Choices): Gesture {
  const columns = notebook.entries.map(({ key }) => key)
  const rows = rowsOf(notebook).filter(({ kind }) => kind !== 'group' && (kind !== 'computed' || choices.once(40))).map(({ row }) => row.key)
  const column = () => (columns.length === 0 || choices.once(40) ? 'nowhere' : choices.of(columns))
  const row = () => (choices.once(60) ? choices.of(['settings/gone', 'computed/none', '', 'group/fork']) : choices.of(rows))
  const text = () => randomText(choices)
  const several = <T>(one: () => T): T[] => Array.from({ length: 1 + choices.below(5) }, one)
  switch (choices.below(11)) {
    case 0: case 1: case 2: return { kind: 'setCell', column: column(), row: row(), text: text() }
    case 3: return { kind: 'clearCells', cells: [{ column: column(), row: row() }] }
    case 4: return { kind: 'setHeader', column: column(), field: choices.of(['id', 'date', 'reason'] as const), text: text() }
    case 5: return { kind: 'annotate', column: column(), row: row(), text: choices.once(4) ? '' : text() }
    case 6: return { kind: 'addEntry', date: '2026-05-01', ...(choices.once(2) ? { after: column() } : {}), ...(choices.once(2) ? { id: text() } : {}), ...(choices.once(2) ? { reason: text() } : {}) }
    case 7: return { kind: 'removeEntry', column: column() }
    case 9: return { kind: 'returnTo', date: '2026-05-01', column: column(), reason: text(), ...(choices.once(2) ? { id: text() } : {}) }
    case 8: return { kind: 'setCells', cells: several(() => ({ column: column(), row: row(), text: text() })) }
    default: return { kind: 'clearCells', cells: several(() => ({ column: column(), row: row() })) }
  }
}
