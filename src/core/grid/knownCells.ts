import type { DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { cellOf } from './cells'
import type { RowSource } from './rows'
import type { Cell } from './view'

/** The cells of an entry, each made once in certain units, also over versions of a text in which the entry says the same. */
export interface KnownCells {
  cell: (source: Exclude<RowSource, { kind: 'group' }>, notebook: Notebook, entry: Entry) => Cell
}

const known = new WeakMap<object, { units: DisplayUnits; datum: string; cells: KnownCells }>()

/**
 * Cells are values: who wants to mark one takes a copy. `datum` names all that they stand on besides the entry: of other
 * entries the one thing that `geometryDatum` tells, and what is known of the entry's log.
 */
export function knownCells(entry: Entry, units: DisplayUnits, datum: string): KnownCells {
  const before = known.get(entry.content)
  if (before?.units === units && before.datum === datum) return before.cells
  const made = new Map<string, Cell>()
  const cells: KnownCells = {
    cell: (source, notebook, entry) => {
      const cell = made.get(source.row.key) ?? cellOf(source, notebook, entry, units)
      made.set(source.row.key, cell)
      return cell
    },
  }
  known.set(entry.content, { units, datum, cells })
  return cells
}
