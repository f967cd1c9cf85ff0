import type { Adjuster } from '../adjusters/adjuster'
import { settingRow, type Entry, type Stranger } from '../notebook/notebook'
import { isBlank } from '../notebook/isBlank'
import { nodeAt, pairOf, type MapNode } from '../notebook/tree'
import { say } from '../words/say'
import { meantName } from './meantName'
import type { EntryRule, Report } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

export const unknownLeg: EntryRule = {
  code: 'unknown-leg',
  severity: 'error',
  says: 'A setting names a leg that the adjuster does not have.',
  why: 'Legs are left and right as seen from the saddle; an adjuster in one leg has only that one.',
  checkEntry: (entry, { text, root }) => {
    const unwritten = new Map<Adjuster, readonly string[]>()
    return entry.strangers.flatMap((stranger) => {
      const { adjuster } = stranger
      if (!adjuster || hasOddLegs(root, adjuster)) return []
      const legs = unwritten.get(adjuster) ?? unwrittenLegs(entry, adjuster)
      unwritten.set(adjuster, legs)
      return [report(text, stranger, adjuster, legs)]
    })
  },
}

/** Where what its definition says of its legs cannot be understood, that is told there, and not at every use. */
function hasOddLegs(root: MapNode | undefined, { id }: Adjuster): boolean {
  const legs = nodeAt(root, ['adjusters', id, 'legs'])
  if (legs === undefined || isBlank(legs)) return false
  const names = legs.kind === 'list' ? legs.items : [legs]
  return names.length === 0 || names.some((each) => each.kind !== 'scalar' || (each.text !== 'left' && each.text !== 'right'))
}

/** A leg that is set here already would stand here twice. */
function unwrittenLegs(entry: Entry, { id, legs }: Adjuster): readonly string[] {
  const value = nodeAt(entry.node, ['settings', id])
  return legs.filter((leg) => !pairOf(value, leg))
}

function report(text: string, { key }: Stranger, { id, label, legs }: Adjuster, free: readonly string[]): Report {
  const leg = key.text
  const meant = meantName(leg, free)
  return { message: messageOf(label, legs, leg), range: key.range, row: settingRow(id), fixes: meant ? writeInstead(text, key, meant) : [] }
}

function messageOf(label: string, legs: readonly string[], leg: string): string {
  if (legs.length === 0) return say`${label} has no legs: write its position straight behind its name, not ‘${leg}’`
  if (legs.length > 1) return say`${label} has a left and a right leg, not ‘${leg}’`
  return legs[0] === 'left' ? say`${label} is in the left leg only, not ‘${leg}’` : say`${label} is in the right leg only, not ‘${leg}’`
}
