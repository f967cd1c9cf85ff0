/**
 * The shapes every calculation speaks in. A result brings its unit, its standard uncertainty where it has one, and the
 * working that led to it; what cannot be computed says what is missing, and is never zero or NaN.
 */

/** A number that was measured or follows from measurements; `u` is its standard uncertainty, in the same unit. */
export interface Measured {
  value: number
  u?: number
}

/** What a calculation takes: a bare number, or one with its uncertainty. */
export type Amount = number | Measured

/** One number of the formula. `contribution` is the share of the result's uncertainty that it brings, in the result's unit. */
export interface WorkingInput {
  symbol: string
  name: string
  value: number
  unit: string
  u?: number
  contribution?: number
}

/** How a number came about, for someone who wants to check it. */
export interface Working {
  formula: string
  inputs: WorkingInput[]
  assumptions: string[]
  source: string
}

export interface Result extends Measured {
  unit: string
  working: Working
}

/** Why there is no number: the facts that are missing or that contradict the formula, each a noun phrase. */
export interface Missing {
  missing: string[]
}

export type Outcome<T = Result> = T | Missing

export function isMissing(outcome: unknown): outcome is Missing {
  return typeof outcome === 'object' && outcome !== null && 'missing' in outcome
}

/** The thing found, or `undefined` where something was missing. @example found(trail(…))?.value */
export function found<T extends object>(outcome: Outcome<T>): T | undefined {
  return isMissing(outcome) ? undefined : outcome
}

/** The reasons of all outcomes that are missing, each once. */
export function reasons(...outcomes: unknown[]): string[] {
  return [...new Set(outcomes.filter(isMissing).flatMap((outcome) => outcome.missing))]
}
