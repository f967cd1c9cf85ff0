import { slotKey, slotsOf, type Slot } from '../adjusters/adjuster'
import { convertAmount, ownCount, unitNamed, type Conversion } from '../adjusters/convert'
import type { Adjuster, Assembly } from '../adjusters/adjuster'
import type { Entry } from '../notebook/notebook'
import { perNotebook } from './perEntry'

/** The slots of all adjusters of one control on one assembly, in the order of the notebook. */
export const slotsFor = perNotebook((notebook, control: string, on: Assembly): readonly Slot[] =>
  [...notebook.adjusters.values()].filter((adjuster) => adjuster.control.name === control && adjuster.on === on).flatMap(slotsOf))

/** Where a slot stands in an entry, set there or carried, in its adjuster's own count and from its own end. */
export function countAt(entry: Entry, { adjuster, leg }: Slot): number | undefined {
  const position = entry.state.get(slotKey(adjuster.id, leg))?.setting.reading.value
  return position && ownCount(position, adjuster).count
}

/**
 * What a movement in an adjuster's own count is in mm, above zero towards more of what it controls; or the fact that is
 * missing, such as `mm_per_turn`.
 */
export function millimetresFor(adjuster: Adjuster, by: number): Conversion {
  const inMm = convertAmount(by, adjuster.counts, unitNamed('mm'), adjuster)
  return inMm.count === undefined ? { missing: `${inMm.missing} of ${adjuster.label}` } : { count: inMm.count * towardsMore(adjuster) }
}

/** 1 where a higher count is more of what is controlled, -1 where it is less. */
function towardsMore({ end, higherIs }: Adjuster): 1 | -1 {
  return (end === undefined ? higherIs === 'more' : end === 'open') ? 1 : -1
}
