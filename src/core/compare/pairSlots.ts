import { slotsOf, type Adjuster, type Slot } from '../adjusters/adjuster'
import type { Notebook } from '../notebook/notebook'

/** A place to stand on either side; one of them may be missing. */
export interface SlotPair {
  left?: Slot
  right?: Slot
}

/**
 * Which slot of one notebook answers to which of the other: adjusters of the same name that control the same, then
 * those that alone control the same on the same assembly. Ones that have no counterpart stand alone.
 */
export function pairSlots(left: Notebook | undefined, right: Notebook | undefined): SlotPair[] {
  const waiting = new Set(right?.adjusters.values())
  const pairs = [...(left?.adjusters.values() ?? [])].map((adjuster): [Adjuster, Adjuster | undefined] => {
    const named = right?.adjusters.get(adjuster.id)
    return [adjuster, named?.control === adjuster.control && waiting.delete(named) ? named : undefined]
  })
  const lone = pairs.filter(([, other]) => !other).map(([adjuster]) => adjuster)
  for (const pair of pairs) {
    if (pair[1] || alike(pair[0], lone).length !== 1) continue
    const [only, ...more] = alike(pair[0], waiting)
    if (!only || more.length > 0) continue
    pair[1] = only
    waiting.delete(only)
  }
  return [...pairs.flatMap(([a, b]) => slotPairs(a, b)), ...[...waiting].flatMap((adjuster) => slotPairs(undefined, adjuster))]
}

function alike({ on, control }: Adjuster, among: Iterable<Adjuster>): Adjuster[] {
  return [...among].filter((other) => other.on === on && other.control === control)
}

/** Leg by leg; where either has just one of it, those two, whatever leg they sit in. */
function slotPairs(left: Adjuster | undefined, right: Adjuster | undefined): SlotPair[] {
  const [a, b] = [left ? slotsOf(left) : [], right ? slotsOf(right) : []]
  if (a.length === 1 && b.length === 1) return [{ left: a[0]!, right: b[0]! }]
  const paired = a.map((slot): SlotPair => {
    const other = b.find(({ leg }) => leg === slot.leg)
    return other ? { left: slot, right: other } : { left: slot }
  })
  return [...paired, ...b.filter(({ leg }) => !a.some((slot) => slot.leg === leg)).map((slot) => ({ right: slot }))]
}
