import { sealedPressure } from '../compute/pressure/sealedPressure'
import type { Outcome } from '../compute/working/result'
import { toBase } from '../notation/units'
import type { Slot } from '../adjusters/adjuster'
import { slotKey } from '../adjusters/adjuster'
import { measured } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { assuming } from './assuming'
import { atmosphereOf } from './atmosphereOf'
import { countAt, slotsFor } from './countAt'

/** The slots of a fork's air pressure that count in a unit of pressure. */
export function forkAirSlots(notebook: Notebook): Slot[] {
  return slotsFor(notebook, 'air_pressure', 'fork').filter(({ adjuster }) => adjuster.counts.dimension === 'pressure')
}

/**
 * What the gauge of the fork should show in this entry for the air that was last set, bar: the same air on this day's
 * temperature and at this altitude, which looks like a leak and is none. Only where this entry notes its own air.
 */
export function airElsewhere(notebook: Notebook, entry: Entry): Outcome {
  const slot = forkAirSlots(notebook)[0]
  if (!slot) return { missing: [say('a fork whose air is set by pressure')] }
  const set = lastSet(entry, slot)
  if (!set) return { missing: [say('a pressure set in an entry before')] }
  const [fromC, toC] = [dayOf(set), measured(entry, 'conditions.air')?.base]
  const [from, to] = [atmosphereOf(withDay(set)), atmosphereOf(entry)]
  const count = countAt(set, slot)
  const assumptions = [...new Set([...from.assumptions, ...to.assumptions, say`set in ${set.key}`, say('read with the wheel off the ground, cold')])]
  // One unknown altitude is taken for the other's, so that none of them makes a difference up.
  const both = from.known && to.known
  return assuming(sealedPressure({
    gaugeBar: count === undefined ? undefined : toBase(count, slot.adjuster.counts), fromC, toC,
    ...(both ? { fromAtmosphereBar: from.bar, toAtmosphereBar: to.bar } : {}),
  }), both ? assumptions : [say('no difference of altitude, since it is not noted on both days'), ...assumptions.filter((line) => !from.assumptions.includes(line) && !to.assumptions.includes(line))])
}

/** The entry before that last set the pressure, rather than found it. */
function lastSet(entry: Entry, { adjuster, leg }: Slot): Entry | undefined {
  return entry.inherited.get(slotKey(adjuster.id, leg))?.setIn
}

/** The temperature that holds for an entry: its own, else the nearest noted before it on the same day. */
function dayOf(entry: Entry): number | undefined {
  return measured(withDay(entry), 'conditions.air')?.base
}

function withDay(entry: Entry): Entry {
  const day = entry.date?.value.slice(0, 10)
  for (let at: Entry | undefined = entry; at && at.date?.value.slice(0, 10) === day; at = at.parent) {
    if (measured(at, 'conditions.air')) return at
  }
  return entry
}
