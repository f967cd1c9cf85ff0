import { findUnit, toBase } from '../../notation/units'

/** mm for one of a unit of length as it stands over a column, `in` among them, which in a sentence is no unit; `undefined` for others. */
export function lengthOf(unit: string): number | undefined {
  const known = findUnit(unit.trim().toLowerCase() === 'in' ? 'inch' : unit)
  return known?.dimension === 'length' ? toBase(1, known) : undefined
}
