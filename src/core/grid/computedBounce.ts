import { describeRatio } from '../compute/bounce/describeBounce'
import type { End } from '../compute/sag/loadCase'
import { bounceHeightsOf, dampedFrequencyOf, dampingBalanceOf, dampingRatioOf, naturalFrequencyOf } from '../derived/bounceOf'
import { anyEntry, type Computed } from './computedRow'

/** The bounce test of one end. */
export function computedBounce(end: End): Computed[] {
  const shared = { group: 'bounce', detail: end, digits: 2, plusMinus: true, wanted: anyEntry((_, entry) => bounceHeightsOf(entry, end).length > 0) } as const
  return [
    { ...shared, key: `bounce.${end}.damping_ratio`, label: 'Damping ratio', unit: '', compute: (notebook, entry) => dampingRatioOf(notebook, entry, end),
      about: 'How fast the swings of a push die away, 1 being the first that does not swing past. No figure to aim for was ever published: compare it with the other end and with itself.',
      note: (_notebook, _entry, { value }) => describeRatio(value) },
    { ...shared, key: `bounce.${end}.damped_hz`, label: 'Damped frequency', unit: 'Hz', compute: (notebook, entry) => dampedFrequencyOf(notebook, entry, end),
      about: 'Swings a second as they were timed, else as springs, load and damping make them.' },
    { ...shared, key: `bounce.${end}.natural_hz`, label: 'Natural frequency', unit: 'Hz', compute: (notebook, entry) => naturalFrequencyOf(notebook, entry, end),
      about: 'Swings a second without damping: from the timed swings, else from the rate of the springs and what hangs on them.' },
  ]
}

const bothEnds = anyEntry((_, entry) => (['front', 'rear'] as const).every((end) => bounceHeightsOf(entry, end).length > 0))

/** Front against rear. */
export const computedBalance: readonly Computed[] = [
  { key: 'bounce.front_over_rear', group: 'bounce', label: 'Damping ratio', detail: 'front over rear', unit: '', digits: 2, plusMinus: true, wanted: bothEnds,
    about: 'How the front dies away against the rear, 1 being alike. The trade sets the front first, where it can be seen, and brings the rear to match.',
    compute: (notebook, entry) => dampingBalanceOf(notebook, entry) },
]
