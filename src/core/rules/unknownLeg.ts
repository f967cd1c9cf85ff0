import { nearest } from '../nearest'
import type { EntryRule } from './rule'

export const unknownLeg: EntryRule = {
  code: 'unknown-leg',
  severity: 'error',
  says: 'A setting names a leg that the adjuster does not have.',
  why: 'Legs are left and right as seen from the saddle; an adjuster in one leg has only that one.',
  checkEntry: (entry) =>
    entry.strangers.flatMap(({ leg, adjuster, range }) => {
      if (leg === undefined || !adjuster) return []
      const meant = nearest(leg, adjuster.legs)
      const fixes = meant ? [{ title: `Write ‘${meant}’`, changes: [{ ...range, text: meant }] }] : []
      return [{ message: `${adjuster.label} ${sayLegs(adjuster.legs)}, not ‘${leg}’`, range, fixes }]
    }),
}

function sayLegs(legs: readonly string[]): string {
  if (legs.length === 0) return 'has no legs: its position stands straight behind its name'
  return legs.length === 1 ? `is in the ${legs[0]} leg only` : `has a ${legs.join(' and a ')} leg`
}
