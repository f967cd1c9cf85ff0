import { say } from '../words/say'
import { printNumber, readAmount } from './amount'
import { notUnderstood, understood, type Reading } from './reading'
import { nearest } from '../nearest'
import { findUnit, fromBase, toBase, units, type Dimension, type Unit } from './units'

/** A measured thing: the amount and unit as written, and the value in the base unit of its dimension. */
export interface Quantity {
  amount: number
  unit: Unit
  /** In mm, kg, N/mm, bar, °C, deg, N, ml or %. */
  base: number
}

/** The unit a bare number has: mm, kg, N/mm, bar, °C, deg, N, ml, %. */
export function baseUnit(dimension: Dimension): Unit {
  return units.find((unit) => unit.dimension === dimension)!
}

/**
 * Reads a quantity such as `9.5`, `0.95 kgf/mm`, `185 lb`, `32 psi`, `5 in`; a bare number has the dimension's base unit.
 * Several dimensions may be allowed (`30 %` beside `35 mm`); the first one is what a bare number means.
 */
export function readQuantity(text: string, ...allowed: [Dimension, ...Dimension[]]): Reading<Quantity> {
  const number = readAmount(text)
  if (number.value === undefined) return number
  const { amount, rest } = number.value
  const unit = rest === '' ? baseUnit(allowed[0]) : unitFor(rest, allowed)
  if (!unit) return notUnderstood(say`‘${rest}’ is no unit known here`, guess(amount, rest, allowed))
  if (!allowed.includes(unit.dimension)) return notUnderstood(say`${unit.symbol} is no unit of ${allowed.map((each) => say(each)).join(say(' or '))}`)
  return understood({ amount, unit, base: toBase(amount, unit) })
}

/** `in` is an inch where a length is asked for, and a `lb` is a force where a force is. */
function unitFor(spelling: string, allowed: readonly Dimension[]): Unit | undefined {
  const lower = spelling.toLowerCase()
  if (lower === 'in' && allowed.includes('length')) return findUnit('inch')
  if ((lower === 'lb' || lower === 'kg') && allowed.includes('force') && !allowed.includes('mass')) return findUnit(`${lower}f`)
  return findUnit(spelling)
}

/** A misspelt unit of the right kind. Never another unit with the same number: that would change what was measured. */
function guess(amount: number, spelling: string, allowed: readonly Dimension[]): string | undefined {
  const fitting = units.filter((unit) => allowed.includes(unit.dimension))
  const meant = nearest(spelling, fitting.flatMap((unit) => unit.spellings).filter((name) => name.length > 2))
  return meant && `${printNumber(amount, 6)} ${findUnit(meant)!.symbol}`
}

/** Writes a base value in a unit. @example printQuantity(9.3163175, findUnit('kgf/mm')!) // '0.95 kgf/mm' */
export function printQuantity(base: number, unit: Unit, digits = 2): string {
  return `${printNumber(fromBase(base, unit), digits)} ${unit.symbol}`
}
