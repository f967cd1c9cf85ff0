import type { End } from '../compute/sag/loadCase'
import { computedBounce } from './computedBounce'
import { computedGeometry } from './computedGeometry'
import { computedRide } from './computedRide'
import type { Computed } from './computedRow'
import { computedSag } from './computedSag'
import { computedSprings } from './computedSprings'

const ends: readonly End[] = ['front', 'rear']

/** Every row that is worked out, in the order of the grid. */
export const computedRows: readonly Computed[] = [
  ...ends.flatMap((end) => [...computedSag(end), ...computedSprings(end)]),
  ...computedGeometry, ...ends.flatMap(computedBounce), ...ends.flatMap(computedRide),
]
