import type { Adjuster } from './adjuster'

/** The lowest figure an adjuster can stand at: steps begin at 1, counts at nought. */
export function lowestCount({ counts }: Adjuster): number {
  return counts.dimension === 'step' ? 1 : 0
}

/** How many of its own count lie between its two ends; absent where its range is not known. */
export function spanOf(adjuster: Adjuster): number | undefined {
  if (adjuster.range === undefined) return undefined
  const span = adjuster.range - lowestCount(adjuster)
  return span > 0 ? span : undefined
}

/**
 * Where in its range a count stands, 0 being the least of what it controls and 1 the most; beyond them where it is
 * recorded so. Absent where the range is not known.
 *
 * @example shareAt(reboundOfTwentyClicks, 5) // 0.75: five out of twenty from closed
 */
export function shareAt(adjuster: Adjuster, count: number): number | undefined {
  const span = spanOf(adjuster)
  if (span === undefined) return undefined
  const share = (count - lowestCount(adjuster)) / span
  const rises = adjuster.end === undefined ? adjuster.higherIs === 'more' : adjuster.end === 'open'
  return rises ? share : 1 - share
}
