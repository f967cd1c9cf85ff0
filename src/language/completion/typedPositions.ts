import type { Adjuster } from '../../core/adjusters/adjuster'
import { inNotation, ownCount, ownPosition, unitNamed } from '../../core/adjusters/convert'
import type { Amount } from '../../core/notation/amount'
import { printPosition, type End, type Position } from '../../core/notation/position'
import type { Unit } from '../../core/notation/units'
import type { Completion } from './completion'
import { numberText } from './units'

/**
 * The positions that a typed number can mean on an adjuster. In its own count it is written as typed. Counted from the
 * other end or in another unit it is offered as such and written converted, so that nobody counts from the wrong end.
 *
 * @example typedPositions('3', …, rebound of 10 clicks) // '3', '3 out', '3 clicks out', '3 in' which writes '7 clicks out'
 */
export function typedPositions(typed: string, { amount, rest }: Amount, adjuster: Adjuster, before: Position | undefined): Completion[] {
  const number = numberText(typed, rest)
  const own = ownPosition(amount, adjuster)
  const short: Position[] = own.end ? [{ amount, end: own.end }] : []
  const ownForms = before?.unit ? [own, ...short] : [...short, own]
  // First what stands there: whoever ends the line after a bare number wants just that.
  const asIs: Completion[] = rest === '' ? [{ label: number, kind: 'position', detail: `is ${printPosition(own)}`, insert: number }] : []
  return [
    ...asIs,
    ...ownForms.map((form) => asTyped(form, number, adjuster)),
    ...otherForms(amount, adjuster).flatMap((form) => converted(form, number, adjuster)),
  ]
}

function asTyped(form: Position, number: string, { label }: Adjuster): Completion {
  const text = withNumber(form, number)
  return { label: text, kind: 'position', detail: label, insert: text, filter: leading(form, number) }
}

function converted(form: Position, number: string, adjuster: Adjuster): Completion[] {
  const { count } = ownCount(form, adjuster)
  if (count === undefined || count < -1e-6 || (adjuster.range !== undefined && count > adjuster.range + 1e-6)) return []
  const text = printPosition(ownPosition(Math.max(count, 0), adjuster))
  return [{ label: withNumber(form, number), kind: 'position', detail: `is ${text}`, insert: text, filter: leading(form, number) }]
}

/** The other end, flats and turns of a hex, and every unit that the adjuster's ratios allow. */
function otherForms(amount: number, adjuster: Adjuster): Position[] {
  const { counts, end } = adjuster
  const units = ['clicks', 'turns', 'flats', 'rings', 'mm', ...(counts.dimension === 'pressure' ? ['bar', 'psi', 'kPa'] : [])].map(unitNamed)
  // Nobody counts the clicks of a screw in flats.
  const fitting = units.filter((unit) => unit !== counts && !(unit.symbol === 'flats' && counts.symbol === 'clicks'))
  const inUnits = fitting.filter((unit) => inNotation(0, adjuster, unit, end).count !== undefined)
  const opposite: End | undefined = end === undefined ? undefined : end === 'closed' ? 'open' : 'closed'
  return [...(opposite && adjuster.range !== undefined ? [{ amount, end: opposite }] : []), ...inUnits.map((unit) => position(amount, unit, end))]
}

function position(amount: number, unit: Unit, end: End | undefined): Position {
  return end === undefined ? { amount, unit } : { amount, unit, end }
}

/** As `printPosition` writes it, but with the number as it was typed: `1.75` stays `1.75`. */
function withNumber(form: Position, number: string): string {
  const printed = printPosition(form)
  const amount = printPosition({ amount: form.amount })
  if (/^(dial|step) /.test(printed)) return printed.replace(amount, () => number)
  return printed.replace(/^-?[\d.]+(?: \d+\/\d+|\/\d+)?/, () => number)
}

/** `step 4` is typed as `4` too. */
function leading(form: Position, number: string): string {
  const text = withNumber(form, number)
  return text.startsWith(number) ? text : `${number} ${text}`
}
