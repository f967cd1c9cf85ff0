import type { End } from '../compute/sag/loadCase'
import { computedAir } from './computedAir'
import { computedBalance, computedBounce } from './computedBounce'
import { computedGeometry } from './computedGeometry'
import { computedLoads } from './computedLoads'
import { computedLog } from './computedLog'
import { computedRide } from './computedRide'
import type { Computed } from './computedRow'
import { computedSag } from './computedSag'
import { computedSpringFacts } from './computedSpringFacts'
import { computedSprings } from './computedSprings'

const ends: readonly End[] = ['front', 'rear']

/** Every row that is worked out, in the order of the grid. */
export const computedRows: readonly Computed[] = [
  ...ends.flatMap((end) => [...computedSag(end), ...computedSprings(end)]),
  ...ends.flatMap(computedSpringFacts), ...computedAir, ...computedLoads,
  ...computedGeometry, ...ends.flatMap(computedBounce), ...computedBalance, ...ends.flatMap(computedRide), ...computedLog,
]
