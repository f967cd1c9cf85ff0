import { heatedTo, pressureRise } from '../compute/pressure/heatedTo'
import type { End } from '../compute/sag/loadCase'
import type { Outcome } from '../compute/working/result'
import { toBase } from '../notation/units'
import { measured } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { assuming } from './assuming'
import { atmosphereOf } from './atmosphereOf'
import { countAt, slotsFor } from './countAt'

/** The cold pressure set at one end, bar gauge: the tyre's adjuster is the one whose name says the end. */
export function coldTyreOf(notebook: Notebook, entry: Entry, end: End): number | undefined {
  const slot = slotsFor(notebook, 'tyre_pressure', 'tyres').find(({ adjuster }) => adjuster.counts.dimension === 'pressure' && adjuster.id.toLowerCase().includes(end))
  const count = slot && countAt(entry, slot)
  return count === undefined ? undefined : toBase(count, slot!.adjuster.counts)
}

const hotTyreOf = (entry: Entry, end: End) => measured(entry, `ride.${end}_tyre_hot`)?.base

/** How far the pressure rose from cold to hot in this entry's ride, percent. */
export function tyreRiseOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  return pressureRise({ coldBar: coldTyreOf(notebook, entry, end), hotBar: hotTyreOf(entry, end) })
}

/** How warm the air in the tyre got, °C, from both pressures and the temperature of the day at this altitude. */
export function tyreTemperatureOf(notebook: Notebook, entry: Entry, end: End): Outcome {
  const atmosphere = atmosphereOf(entry)
  const temperature = heatedTo({
    coldBar: coldTyreOf(notebook, entry, end), hotBar: hotTyreOf(entry, end), coldC: measured(entry, 'conditions.air')?.base, atmosphereBar: atmosphere.bar,
  })
  return assuming(temperature, atmosphere.assumptions)
}
