import type { End } from '../compute/sag/loadCase'
import { found, isMissing } from '../compute/working/result'
import { hasCoil, rateFromCoil } from '../derived/coilOf'
import { leverageProgressOf, rateAtRiderSagOf } from '../derived/leverageRows'
import { sagOf } from '../derived/sagOf'
import { preloadForceOf } from '../derived/preloadForceOf'
import { hasStack, stackChangeOf, stackRatesOf } from '../derived/stackOf'
import { leverageOf } from '../derived/springsFitted'
import type { Entry, Notebook } from '../notebook/notebook'
import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import { anyEntry, type Computed } from './computedRow'

/** What is known of the springs of one end by themselves, before any sag. */
export function computedSpringFacts(end: End): Computed[] {
  const shared = { group: 'springs' } as const
  const stacked = (notebook: Notebook) => hasStack(notebook, end)
  return [
    { ...shared, key: `${end}.coil_rate_n_per_mm`, label: 'Spring rate', detail: `${end}, by its wire`, unit: 'N/mm', digits: 1, plusMinus: true, wanted: (notebook) => hasCoil(notebook, end),
      about: 'The rate that wire, diameter and coils make. It counts as the spring fitted where no rate is noted. The wire counts with its fourth power.',
      compute: (notebook) => rateFromCoil(notebook, end) },
    { ...shared, key: `${end}.stack_first_n_per_mm`, label: 'Stack, first rate', detail: end, unit: 'N/mm', digits: 2, wanted: stacked,
      about: 'Both springs of one stack on one another, until the soft one stops.', compute: (notebook) => stackRatesOf(notebook, end).first },
    { ...shared, key: `${end}.stack_second_n_per_mm`, label: 'Stack, second rate', detail: end, unit: 'N/mm', digits: 2, wanted: stacked,
      about: 'The stiff spring of one stack alone, once the soft one has stopped.', compute: (notebook) => stackRatesOf(notebook, end).second },
    { ...shared, key: `${end}.stack_change_mm`, label: 'Stack, changes at', detail: end, unit: 'mm', digits: 1, wanted: stacked,
      about: 'Travel from fully extended at which the rate changes, with the preload of this entry.',
      compute: (notebook, entry) => stackChangeOf(notebook, entry, end), note: (notebook, entry, { value }) => besideSag(notebook, entry, end, value) },
    { ...shared, key: `${end}.preload_force_n`, label: 'Preload force', detail: end, unit: 'N', digits: 0, wanted: anyEntry((notebook, entry) => !isMissing(preloadForceOf(notebook, entry, end))),
      about: 'What each spring pushes with while its end is still fully extended. Preload changes this and the ride height; the rate stays as it is.',
      compute: (notebook, entry) => preloadForceOf(notebook, entry, end) },
    ...(end === 'rear' ? leverageRows : []),
  ]
}

function besideSag(notebook: Notebook, entry: Entry, end: End, changeMm: number): string | undefined {
  const sag = found(sagOf(notebook, entry, end, 'rider'))
  if (changeMm <= 0) return say('the preload alone has used the soft spring up')
  if (!sag) return undefined
  return sag.value < changeMm ? say('the rider stands on its soft part') : say('the rider stands past it, on the stiff spring')
}

const hasTable = (notebook: Notebook): boolean => 'table' in (leverageOf(notebook) ?? {})

const leverageRows: readonly Computed[] = [
  { key: 'rear.progressivity_pct', group: 'springs', label: 'Leverage, progressivity', detail: 'rear', unit: '%', digits: 1, wanted: hasTable,
    about: 'How much the motion ratio, shock travel over wheel travel, rises over the travel.', compute: (notebook) => leverageProgressOf(notebook) },
  { key: 'rear.rate_at_rider_sag_n_per_mm', group: 'springs', label: 'Wheel rate here', detail: 'rear, at rider sag', unit: 'N/mm', digits: 1, wanted: hasTable,
    about: 'The rate of the rear springs at the wheel just where the rider sits: the spring by the square of the ratio there, and the spring’s force by the change of the ratio.',
    compute: (notebook, entry) => rateAtRiderSagOf(notebook, entry),
    note: (_notebook, _entry, { working }) => {
      const ratio = working.inputs.find(({ symbol }) => symbol === 'm')
      return ratio && say`motion ratio ${printNumber(ratio.value, 3)} there`
    } },
]
