import { findUnit, isCount, units } from '../../../src/core/notation/units'
import { nameOfDimension } from './dimensionNames'
import { code, table } from './markdown'

/** The units of measured things; the first of each kind is what a bare number has. */
export function unitsTable(): string {
  const kinds = [...new Set(units.filter((unit) => !isCount(unit)).map(({ dimension }) => dimension))]
  return table(['Kind', 'A bare number is', 'Units, and other ways to write them'], kinds.map((kind) => {
    const own = units.filter(({ dimension }) => dimension === kind)
    return [nameOfDimension(kind), code(own[0]!.symbol), own.map(spellings).join('; ')]
  }))
}

/** The units adjusters are counted in. */
export function countsTable(): string {
  return table(['Count', 'Other ways to write it'], units.filter(isCount).map(({ symbol, spellings: all }) => [code(symbol), all.filter((each) => each !== symbol).map(code).join(', ')]))
}

function spellings(unit: { symbol: string; spellings: readonly string[] }): string {
  const others = unit.spellings.filter((each) => each !== unit.symbol.toLowerCase() && findUnit(each)?.symbol === unit.symbol)
  return others.length === 0 ? code(unit.symbol) : `${code(unit.symbol)} (${others.map(code).join(', ')})`
}
