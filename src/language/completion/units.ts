import { readAmount } from '../../core/notation/amount'
import { units, type Dimension } from '../../core/notation/units'
import { dimensionsOf } from '../../core/notebook/dimensionsOf'
import { schemasAt } from '../../core/notebook/schemaKeys'
import { phrase, say } from '../../core/words/say'
import type { Asked, Completion } from './completion'

/** The units that fit behind a number; the first is what a bare number is in. */
export function unitCompletions({ path, cursor }: Asked): Completion[] {
  const dimensions = dimensionsOf(schemasAt(path))
  const typed = dimensions && readAmount(cursor.typed).value
  if (!dimensions || !typed) return []
  const number = numberText(cursor.typed, typed.rest)
  return dimensions.flatMap((dimension) => units.filter((unit) => unit.dimension === dimension).map(({ symbol }, at) => {
    const bare = at === 0 && dimension === dimensions[0]
    const label = `${number} ${symbol}`
    return { label, kind: 'unit', detail: bare ? say`${nameOf(dimension)}; what a bare number is in` : nameOf(dimension), insert: label } satisfies Completion
  }))
}

function nameOf(dimension: Dimension): string {
  const name = names[dimension]
  return name === undefined ? '' : say(name)
}

const names: Partial<Record<Dimension, string>> = {
  length: phrase('length'), mass: phrase('mass'), stiffness: phrase('spring rate'), pressure: phrase('pressure'), temperature: phrase('temperature'), angle: phrase('angle'), share: phrase('share of travel'),
}

/** A typed number as it is written, without the words behind it. */
export function numberText(typed: string, rest: string): string {
  const words = typed.trim().replace(/\s+/g, ' ')
  return words.endsWith(rest) ? words.slice(0, words.length - rest.length).trim() : words
}
