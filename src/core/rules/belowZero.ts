import type { Adjuster } from '../adjusters/adjuster'
import { fields, measured, pathOf } from '../notebook/fields'
import type { Entry } from '../notebook/notebook'
import { say } from '../words/say'
import type { EntryRule, Report } from './rule'
import { sayMeasured } from './sagEnds'
import { writtenPositions } from './writtenSettings'

export const belowZero: EntryRule = {
  code: 'below-zero',
  severity: 'error',
  says: 'A position, a pressure or a measured length is below zero.',
  why: 'Counting begins at the stop and measuring at nothing. Never force an adjuster past its seat to find more.',
  checkEntry: (entry) => [...positions(entry), ...measurements(entry)],
}

function positions(entry: Entry): Report[] {
  return writtenPositions(entry).flatMap(({ setting: { adjuster, node }, position, row }) => {
    if (position.amount >= 0 || eitherSide(adjuster)) return []
    const { label, end } = adjuster
    const message = end === undefined ? say`${label} cannot stand at ${node.text}, below zero`
      : end === 'open' ? say`${label} cannot stand at ${node.text}, below zero: it is counted up from fully open` : say`${label} cannot stand at ${node.text}, below zero: it is counted up from fully closed`
    return [{ message, range: node.range, row }]
  })
}

/** Heights are measured from a mark and may lie on either side of it; a dial may be numbered so. */
function eitherSide({ control, counts, end }: Adjuster): boolean {
  return ['fork_height', 'ride_height'].includes(control.name) || (counts.dimension === 'dial' && end === undefined)
}

// Land lies below the sea in places.
const measuredFromZero = fields.filter(({ key, dimension }) => (dimension === 'length' && key !== 'conditions.altitude') || dimension === 'pressure')

/** By the key of the entry that they stand under. */
const fromZero = new Map(measuredFromZero.map(({ key }) => pathOf(key).path[0]!).map((top) => [top, measuredFromZero.filter(({ key }) => pathOf(key).path[0] === top)]))

function measurements(entry: Entry): Report[] {
  return entry.node.pairs.flatMap((pair) => fromZero.get(pair.key.text) ?? []).flatMap(({ key, label }) => {
    const value = measured(entry, key)
    return value && value.base < 0 ? [{ message: say`${say(label)}: ${sayMeasured(value)} is below zero`, range: value.range, row: key }] : []
  })
}
