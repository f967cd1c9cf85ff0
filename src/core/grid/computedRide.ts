import type { End } from '../compute/sag/loadCase'
import { isMissing, type Outcome } from '../compute/working/result'
import { travelUsedOf } from '../derived/travelUsedOf'
import { tyreRiseOf, tyreTemperatureOf } from '../derived/tyresOf'
import { measured } from '../notebook/fields'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { anyEntry, type Computed } from './computedRow'

/** What a ride's readings of one end come to. */
export function computedRide(end: End): Computed[] {
  return [
    { key: `${end}.travel_used_pct`, group: 'ride', label: 'Travel used', detail: `${end}, of its travel`, unit: '%', digits: 0,
      wanted: anyEntry((_, entry) => measured(entry, `ride.${end}_travel_used`) !== undefined),
      about: 'The deepest point of the ride as a share of the travel of this end. Nearly all of it at the hardest place is as it should be.',
      compute: (notebook, entry) => shareUsed(notebook, entry, end), note: (notebook, entry, _result, units) => suggestion(notebook, entry, end, units) },
    { key: `${end}.tyre_rise_pct`, group: 'ride', label: 'Tyre pressure, rise', detail: end, unit: '%', digits: 0,
      wanted: anyEntry((_, entry) => measured(entry, `ride.${end}_tyre_hot`) !== undefined),
      about: 'How far the gauge rose from cold to hot.',
      compute: (notebook, entry) => tyreRiseOf(notebook, entry, end), note: (notebook, entry, _result, units) => warmth(tyreTemperatureOf(notebook, entry, end), units) },
  ]
}

function shareUsed(notebook: Notebook, entry: Entry, end: End): Outcome {
  const used = travelUsedOf(notebook, entry, end)
  return isMissing(used) ? used : used.usedPercent
}

function suggestion(notebook: Notebook, entry: Entry, end: End, units: DisplayUnits): string | undefined {
  const used = travelUsedOf(notebook, entry, end)
  return isMissing(used) ? undefined : say`${sayIn(units)(used.reserveMm.value, 'mm')} in reserve: ${say(used.suggests[0]!)}`
}

const warmth = (outcome: Outcome, units: DisplayUnits): string | undefined => (isMissing(outcome) ? undefined : say`its air was at ${sayIn(units)(outcome.value, '°C', 0)}, were it as cold as the day when set`)
