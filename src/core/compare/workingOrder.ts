import type { Adjuster } from '../adjusters/adjuster'

/**
 * What is done before what at one end. Big work comes first, because it disturbs the rest: a preload hex carries the
 * rebound screw in its middle along, and so does a high-speed hex its low-speed screw. Common practice, no source.
 */
const order: readonly (readonly string[])[] = [
  ['spring_rate'], ['oil_level'], ['fork_height', 'ride_height'], ['air_pressure'], ['balance_pressure'], ['preload'],
  ['high_speed_compression', 'high_speed_rebound'],
]

/** Pairs first, then what only the left leg has, then the right one: nobody walks round the machine twice for it. */
const side = ({ legs }: Adjuster): number => (legs.length === 1 ? (legs[0] === 'left' ? 1 : 2) : 0)

/** Steps in the order in which they are best done; alike ones as the notebook has them. */
export function inWorkingOrder<T extends { adjuster: Adjuster }>(steps: readonly T[]): T[] {
  const adjusters = new Map(steps.map(({ adjuster }) => [adjuster.id, adjuster]))
  const rank = (adjuster: Adjuster): number => {
    const around = adjuster.inside === undefined ? undefined : adjusters.get(adjuster.inside)
    return Math.max(plainRank(adjuster), around ? plainRank(around) + 0.5 : 0)
  }
  return [...steps].sort((a, b) => rank(a.adjuster) - rank(b.adjuster) || side(a.adjuster) - side(b.adjuster))
}

function plainRank({ control }: Adjuster): number {
  const at = order.findIndex((names) => names.includes(control.name))
  return at < 0 ? order.length : at
}
