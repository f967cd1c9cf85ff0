import { printNumber } from './amount'
import { printWithUncertainty } from './uncertainty'
import { findUnit, fromBase, toBase, type Unit } from './units'

/**
 * The units a person wants computed numbers shown in, by what is measured. A plain value that whoever shows numbers is
 * handed; the file, what is typed, the export and the names of numbers know nothing of it.
 */
export interface DisplayUnits {
  length: 'mm' | 'in'
  rate: 'N/mm' | 'kgf/mm' | 'lb/in'
  force: 'N' | 'kgf' | 'lbf'
  mass: 'kg' | 'lb'
  pressure: 'bar' | 'psi' | 'kPa'
  temperature: '°C' | '°F'
}

/** The units of the format itself, in which everything is computed. */
export const fileUnits: DisplayUnits = { length: 'mm', rate: 'N/mm', force: 'N', mass: 'kg', pressure: 'bar', temperature: '°C' }

/** What may be chosen for each, the format's own first. */
export const displayChoices: { readonly [Kind in keyof DisplayUnits]: readonly DisplayUnits[Kind][] } = {
  length: ['mm', 'in'], rate: ['N/mm', 'kgf/mm', 'lb/in'], force: ['N', 'kgf', 'lbf'], mass: ['kg', 'lb'], pressure: ['bar', 'psi', 'kPa'], temperature: ['°C', '°F'],
}

const keyOf = (units: DisplayUnits): string => Object.values(units).join(' ')
const known = new Map<string, DisplayUnits>([[keyOf(fileUnits), fileUnits]])

/**
 * The choices among what someone's settings say; anything else is the format's own unit. The same choices are always the
 * same value, so that what was made in them can be found again.
 */
export function readDisplayUnits(said: (kind: keyof DisplayUnits) => unknown): DisplayUnits {
  const kinds = Object.keys(fileUnits) as (keyof DisplayUnits)[]
  const chosen = Object.fromEntries(kinds.map((kind) => [kind, displayChoices[kind].find((unit) => unit === said(kind)) ?? fileUnits[kind]])) as unknown as DisplayUnits
  const same = known.get(keyOf(chosen)) ?? chosen
  known.set(keyOf(chosen), same)
  return same
}

const kindOf = new Map((Object.keys(fileUnits) as (keyof DisplayUnits)[]).map((kind) => [fileUnits[kind] as string, kind]))
const named = (symbol: string): Unit => findUnit(symbol === 'in' ? 'inch' : symbol)!

/** The unit that a number in one of the format's units is shown in; any other unit is its own. @example shownUnit('mm', units) // 'in' */
export function shownUnit(unit: string, units: DisplayUnits): string {
  const kind = kindOf.get(unit)
  return kind ? units[kind] : unit
}

/** A number in a unit to be shown, with its uncertainty and the digits that say as much as they did before. */
export interface Shown {
  value: number
  u?: number
  digits: number
  unit: string
}

/** A number of the format's unit in the one it is to be shown in. A difference of temperatures is none of its readings. */
export function toShown({ value, u }: { value: number; u?: number }, unit: string, digits: number, units: DisplayUnits): Shown {
  const shown = shownUnit(unit, units)
  if (shown === unit) return { value, ...(u === undefined ? {} : { u }), digits, unit }
  const [from, to] = [named(unit), named(shown)]
  const factor = from.factor / to.factor
  return {
    value: fromBase(toBase(value, from), to), ...(u === undefined ? {} : { u: u * factor }),
    digits: Math.min(9, Math.max(0, digits - Math.round(Math.log10(factor)))), unit: shown,
  }
}

/** A number without its unit, as a cell shows it: `38` or `1.5`. */
export function printShown(amount: { value: number; u?: number }, unit: string, digits: number, units: DisplayUnits): string {
  const { value, u, digits: enough } = toShown(amount, unit, digits, units)
  return u === undefined ? printNumber(value, enough) : printWithUncertainty(value, u, enough)
}

/** A number with its unit, for a sentence. @example sayIn(units)(38, 'mm', 1) // '38 mm', or '1.5 in' */
export function sayIn(units: DisplayUnits): (value: number, unit: string, digits?: number) => string {
  return (value, unit, digits = 1) => `${printShown({ value }, unit, digits, units)} ${shownUnit(unit, units)}`
}
