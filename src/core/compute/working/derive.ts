import { say } from '../../words/say'
import { propagate } from './propagate'
import type { Amount, Measured, Outcome, Result, WorkingInput } from './result'

/** A number going into a formula: its name for people, its unit, and the number if there is one. */
export interface Given {
  name: string
  unit: string
  measured: Measured | undefined
}

export interface Derivation<Symbol extends string> {
  /** With the symbols of `from`, so that the numbers can be put in their places. */
  formula: string
  unit: string
  from: Record<Symbol, Given>
  by: (values: Record<NoInfer<Symbol>, number>) => number
  /** A reason why these numbers cannot be worked with, where there is one. */
  unless?: (values: Record<NoInfer<Symbol>, number>) => string | undefined
  assumptions?: readonly string[]
  source: string
}

/** Names an amount for a formula; a number that is not finite counts as missing. */
export function given(name: string, unit: string, amount: Amount | undefined): Given {
  const measured = typeof amount === 'number' ? { value: amount } : amount
  const usable = measured !== undefined && Number.isFinite(measured.value)
  return { name, unit, measured: usable ? keepUncertainty(measured) : undefined }
}

function keepUncertainty({ value, u }: Measured): Measured {
  return u !== undefined && Number.isFinite(u) && u > 0 ? { value, u } : { value }
}

/**
 * Works out a formula: the value, its standard uncertainty to first order, and the working to show.
 * Missing inputs are named; so is a reason of `unless`, and a formula that has no finite answer.
 */
export function derive<Symbol extends string>(derivation: Derivation<Symbol>): Outcome<Result> {
  const { formula, unit, from, by, unless, assumptions = [], source } = derivation
  const symbols = Object.keys(from) as Symbol[]
  const missing = symbols.filter((symbol) => !from[symbol].measured).map((symbol) => from[symbol].name)
  if (missing.length > 0) return { missing: [...new Set(missing)] }

  const measured = symbols.map((symbol) => from[symbol].measured!)
  // One object for all the numbers that are tried, of which there are two for each input: nobody keeps it.
  const numbers = {} as Record<Symbol, number>
  const named = (values: readonly number[]) => {
    for (let place = 0; place < symbols.length; place++) numbers[symbols[place]!] = values[place]!
    return numbers
  }
  const values = named(measured.map((one) => one.value))
  const objection = unless?.(values)
  if (objection !== undefined) return { missing: [objection] }
  const value = by(values)
  if (!Number.isFinite(value)) return { missing: [say`numbers for which ‘${formula}’ has an answer`] }

  const spread = propagate((moved) => by(named(moved)), measured)
  const inputs = symbols.map((symbol, place): WorkingInput => ({
    symbol, name: from[symbol].name, ...measured[place]!, unit: from[symbol].unit,
    ...(spread && measured[place]!.u ? { contribution: Math.abs(spread.contributions[place]!) } : {}),
  }))
  return { value, ...(spread ? { u: spread.u } : {}), unit, working: { formula, inputs, assumptions: [...assumptions], source } }
}
