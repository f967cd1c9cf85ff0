import { formulaWithNumbers } from '../compute/working/formulaWithNumbers'
import { isMissing, type Outcome, type Result, type WorkingInput } from '../compute/working/result'
import { printNumber } from '../notation/amount'
import { fileUnits, shownUnit, toShown, type DisplayUnits } from '../notation/displayUnits'
import { printWithUncertainty } from '../notation/uncertainty'
import { phrase, say } from '../words/say'
import type { CardSection } from './card'

/**
 * How a number came about, for who wants to check it: the formula, the same with this entry's numbers, each input with
 * its unit and uncertainty, what was assumed, and who says so. Of an absent number: what it needs.
 */
export function workingSections(outcome: Outcome, { heading = usual, units = fileUnits }: { heading?: string; units?: DisplayUnits } = {}): CardSection[] {
  if (isMissing(outcome)) return [{ heading: heading === usual ? say('What it needs') : say(heading), lines: outcome.missing.map((fact) => say`needs ${say(fact)}`) }]
  const { working } = outcome
  const inputs = working.inputs.map((input) => inputLine(input, units))
  return [
    { heading: say(heading), lines: [working.formula, ...(working.inputs.length > 0 ? [formulaWithNumbers(working, numberOf)] : []), `= ${inBoth(outcome, outcome.unit, units)}`] },
    ...(inputs.length > 0 ? [{ heading: say('From'), lines: inputs }] : []),
    ...(working.assumptions.length > 0 ? [{ heading: say('Assumes'), lines: working.assumptions.map((words) => say(words)) }] : []),
    { heading: say('Source'), lines: [say(working.source)] },
  ]
}

const usual = phrase('How it comes about')

const numberOf = ({ value }: Pick<WorkingInput, 'value'>): string => String(Number(value.toPrecision(6)))

/** 'L1 = 152 ± 0.6 mm: length with the wheel off the ground', and how much of the uncertainty it brings. */
function inputLine(input: WorkingInput, units: DisplayUnits): string {
  const { symbol, name, contribution } = input
  const share = contribution === undefined ? '' : say`, which brings ± ${digitsOf(contribution)} of the result`
  return `${symbol} = ${inBoth(input, input.unit, units)}: ${say(name)}${share}`
}

/** In the formula's own unit, for the formula would not hold in another, and behind it in the one asked for. */
function inBoth(amount: Pick<Result, 'value' | 'u'>, unit: string, units: DisplayUnits): string {
  const own = withUnit(amount, unit)
  if (shownUnit(unit, units) === unit) return own
  const { value, u, unit: other } = toShown(amount, unit, 0, units)
  return `${own} (${withUnit({ value: Number(value.toPrecision(5)), ...(u === undefined ? {} : { u }) }, other)})`
}

function withUnit({ value, u }: Pick<Result, 'value' | 'u'>, unit: string): string {
  const number = u === undefined ? numberOf({ value }) : printWithUncertainty(value, u, decimalsFor(u))
  return unit === '' ? number : unit === '°' ? `${number}°` : `${number} ${unit}`
}

/** Two significant digits of an uncertainty, as the GUM asks (JCGM 100:2008, 7.2.6). */
const decimalsFor = (u: number): number => Math.min(9, Math.max(0, 1 - Math.floor(Math.log10(u))))
const digitsOf = (u: number): string => (u > 0 ? printNumber(u, decimalsFor(u)) : '0')
