import { settingRow, type Entry } from '../notebook/notebook'
import { nodeAt, pairOf } from '../notebook/tree'
import { meantName } from './meantName'
import type { EntryRule } from './rule'
import { writeInstead } from './writeInstead'

export const unknownLeg: EntryRule = {
  code: 'unknown-leg',
  severity: 'error',
  says: 'A setting names a leg that the adjuster does not have.',
  why: 'Legs are left and right as seen from the saddle; an adjuster in one leg has only that one.',
  checkEntry: (entry) =>
    entry.strangers.flatMap(({ leg, adjuster, range }) => {
      if (leg === undefined || !adjuster) return []
      const meant = meantName(leg, unusedLegs(entry, adjuster.id, adjuster.legs))
      return [{ message: `${adjuster.label} ${sayLegs(adjuster.legs)}, not ‘${leg}’`, range, row: settingRow(adjuster.id), fixes: meant ? [writeInstead(range, meant)] : [] }]
    }),
}

/** A leg that is set here already would stand here twice. */
function unusedLegs(entry: Entry, adjusterId: string, legs: readonly string[]): string[] {
  const value = nodeAt(entry.node, ['settings', adjusterId])
  return legs.filter((leg) => !pairOf(value, leg))
}

function sayLegs(legs: readonly string[]): string {
  if (legs.length === 0) return 'has no legs: write its position straight behind its name'
  return legs.length === 1 ? `is in the ${legs[0]} leg only` : `has a ${legs.join(' and a ')} leg`
}
