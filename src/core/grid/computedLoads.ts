import type { LoadCase } from '../compute/sag/loadCase'
import { found, isMissing } from '../compute/working/result'
import { axleMassOf } from '../derived/loadsOf'
import { frontShareOf, liftingLimitOf, loadsAt, massBehindFrontOf, massHeightOf, riderShareOf, transferOf } from '../derived/massPlace'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { anyEntry, type Computed } from './computedRow'

const isWeighed = (load: LoadCase) => anyEntry((notebook, entry) => (['front', 'rear'] as const).every((end) => axleMassOf(notebook, entry, load, end) !== undefined))
/** Made once: each entry remembers its answer by who asked. */
const weighed = { bike: isWeighed('bike'), rider: isWeighed('rider') }
const hasHeight = anyEntry((notebook, entry) => !isMissing(massHeightOf(notebook, entry).height))
const shared = { group: 'loads' } as const
/** A hard stop on a good road, g. Our own choice of an example. */
const exampleG = 0.8

/** Weight and where it is: what scales tell, and what braking and drive make of it. */
export const computedLoads: readonly Computed[] = [
  ...([['bike', 'Bike alone'], ['rider', 'Rider aboard']] as const).map(([load, detail]): Computed => ({
    ...shared, key: `loads.${load}_front_pct`, label: 'Front share', detail: detail.toLowerCase(), unit: '%', digits: 1, wanted: weighed[load],
    about: `Share of the weight on the front axle, ${detail.toLowerCase()}.`, compute: (notebook, entry) => frontShareOf(notebook, entry, load),
  })),
  { ...shared, key: 'loads.rider_share', label: 'Rider’s front share', unit: '', digits: 2, wanted: (notebook) => weighed.bike(notebook) && weighed.rider(notebook),
    about: 'How much of the rider the front axle carries, 0 to 1, from both weighings. Outside of that a weighing or the stance was off.',
    compute: (notebook, entry) => riderShareOf(notebook, entry) },
  { ...shared, key: 'loads.mass_behind_front_mm', label: 'Centre of mass', detail: 'behind the front axle', unit: 'mm', digits: 0, wanted: (notebook) => weighed.bike(notebook) || weighed.rider(notebook),
    about: 'Where the weight lies along the machine: the wheelbase by the rear’s share of the weight. As ridden where that was weighed.',
    compute: (notebook, entry) => massBehindFrontOf(notebook, entry) },
  { ...shared, key: 'loads.mass_height_mm', label: 'Centre of mass', detail: 'above the ground', unit: 'mm', digits: 0, wanted: hasHeight,
    about: 'Its height, from weighing the front with the rear lifted, else as it is noted.', compute: (notebook, entry) => massHeightOf(notebook, entry).height },
  { ...shared, key: 'loads.transfer_n', label: 'Load transfer', detail: 'for each g', unit: 'N', digits: 0, wanted: hasHeight,
    about: 'How much load goes to the front for each g of braking, and to the rear for each g of drive.',
    compute: (notebook, entry) => transferOf(notebook, entry), note: (notebook, entry, _result, units) => example(notebook, entry, units) },
  { ...shared, key: 'loads.braking_limit_g', label: 'Rear wheel lifts', detail: 'braking', unit: 'g', digits: 2, wanted: hasHeight,
    about: 'The braking at which nothing is left on the rear wheel, if the front tyre holds that much.', compute: (notebook, entry) => liftingLimitOf(notebook, entry, 'braking') },
  { ...shared, key: 'loads.drive_limit_g', label: 'Front wheel lifts', detail: 'drive', unit: 'g', digits: 2, wanted: hasHeight,
    about: 'The drive at which nothing is left on the front wheel, if the rear tyre holds that much.', compute: (notebook, entry) => liftingLimitOf(notebook, entry, 'drive') },
]

function example(notebook: Notebook, entry: Entry, units: DisplayUnits): string | undefined {
  const loads = found(loadsAt(notebook, entry, exampleG))
  if (!loads) return undefined
  const figure = sayIn(units)
  if (loads.lifted) return say`braking with ${printNumber(exampleG, 1)} g is past its limit: the ${say(loads.lifted)} wheel would leave the ground`
  return say`braking with ${printNumber(exampleG, 1)} g: ${figure(loads.frontN.value, 'N', 0)} on the front, ${figure(loads.rearN.value, 'N', 0)} on the rear`
}
