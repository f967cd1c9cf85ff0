import type { DisplayUnits } from '../notation/displayUnits'
import { recall } from '../notebook/content'
import type { Entry, Notebook } from '../notebook/notebook'
import { cellOf } from './cells'
import type { RowSource } from './rows'
import type { Cell } from './view'

/** What cells stand on besides the entry: the same object as long as all of that is the same. */
export type Basis = Readonly<{ units: DisplayUnits; datum: string }>

const bases: Basis[] = []

/** `datum` names all that they stand on of other entries, as `geometryDatum` tells it, and what is known of the entry's log. */
export function basisOf(units: DisplayUnits, datum: string): Basis {
  const known = bases.find((basis) => basis.units === units && basis.datum === datum)
  if (known) return known
  const basis = { units, datum }
  // A few notebooks are looked at in turns, each with logs of its own.
  if (bases.unshift(basis) > mostBases) bases.pop()
  return basis
}

const mostBases = 64

/**
 * The cell of a row in an entry, made once on a basis, also over versions of a text in which the entry and what it looks at
 * say the same. Cells are values: who wants to mark one takes a copy.
 */
export function knownCell(source: Exclude<RowSource, { kind: 'group' }>, notebook: Notebook, entry: Entry, basis: Basis): Cell {
  return recall(entry, `cell ${source.row.key}`, basis, () => cellOf(source, notebook, entry, basis.units))
}
