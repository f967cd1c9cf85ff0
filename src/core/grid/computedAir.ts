import { found, isMissing, type Outcome } from '../compute/working/result'
import { airElsewhere, forkAirSlots } from '../derived/airElsewhere'
import { airAt, hasAir } from '../derived/airOf'
import { sagOf, travelOf } from '../derived/sagOf'
import { sayIn } from '../notation/displayUnits'
import { measured } from '../notebook/fields'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Computed } from './computedRow'

const shared = { group: 'springs' } as const
/** How much the oil is raised to show what that does, mm. */
const stepMm = 10

const atRiderSag = (notebook: Notebook, entry: Entry, what: 'force' | 'rate'): Outcome => {
  const sag = sagOf(notebook, entry, 'front', 'rider')
  return isMissing(sag) ? sag : airAt(notebook, entry, what, { mm: sag, stroke: 'slow' })
}
const atTheEnd = (notebook: Notebook, entry: Entry, what: 'force' | 'pressure', levelByMm = 0): Outcome =>
  airAt(notebook, entry, what, { mm: travelOf(notebook, 'front'), stroke: 'fast', levelByMm })

/** The air above the oil of a fork, and what another day does to the air of one that stands on it. */
export const computedAir: readonly Computed[] = [
  { ...shared, key: 'front.air_force_n', label: 'Air, force', detail: 'at rider sag', unit: 'N', digits: 0, wanted: hasAir,
    about: 'What the air of one leg carries at rider sag, read slowly.', compute: (notebook, entry) => atRiderSag(notebook, entry, 'force') },
  { ...shared, key: 'front.air_rate_n_per_mm', label: 'Air, rate', detail: 'at rider sag', unit: 'N/mm', digits: 2, wanted: hasAir,
    about: 'What the air of one leg adds to the rate of its spring at rider sag. It grows towards the end of the travel.', compute: (notebook, entry) => atRiderSag(notebook, entry, 'rate') },
  { ...shared, key: 'front.air_end_force_n', label: 'Air, force', detail: 'at full travel', unit: 'N', digits: 0, wanted: hasAir,
    about: 'What the air of one leg holds against at the very end of a fast stroke. More oil, which is a smaller oil level, makes more of it and hardly changes the beginning.',
    compute: (notebook, entry) => atTheEnd(notebook, entry, 'force'),
    note: (notebook, entry, { value }, units) => {
      const more = found(atTheEnd(notebook, entry, 'force', -stepMm))
      const gauge = found(atTheEnd(notebook, entry, 'pressure'))
      const figure = sayIn(units)
      const lines = [gauge && say`${figure(gauge.value, 'bar', 2)} there`, more && say`with the oil ${figure(stepMm, 'mm', 0)} higher ${figure(more.value - value, 'N', 0)} more`]
      return lines.filter(Boolean).join('; ') || undefined
    },
    steps: (notebook, entry) => [{ name: say('Pressure there'), outcome: atTheEnd(notebook, entry, 'pressure') }, { name: say`With the oil ${stepMm} mm higher`, outcome: atTheEnd(notebook, entry, 'force', -stepMm) }] },
  { ...shared, key: 'front.air_elsewhere_bar', label: 'Fork air, as last set', detail: 'on this day', unit: 'bar', digits: 2,
    wanted: (notebook) => forkAirSlots(notebook).length > 0 && notebook.entries.some((entry) => entry.asFound && entry.parent && measured(entry, 'conditions.air')),
    about: 'What the gauge should show, cold, for the air that was last set: the same air on this day’s temperature and altitude. A reading that is near it is no leak.',
    compute: (notebook, entry) => airElsewhere(notebook, entry) },
]
