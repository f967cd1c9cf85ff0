/** A preload adjuster as it counts. */
export interface PreloadAdjuster {
  /** Where it stands, in its own count. */
  at: number
  /**
   * Spring preload per count, mm. Below zero where a larger number is less preload: which way an adjuster counts is a
   * property of that adjuster, and nothing that can be assumed.
   */
  mmPerCount: number
  /** The ends of its range in its own count; open where unknown. */
  lowest?: number
  highest?: number
  /** The smallest step it can be set to, in counts: 1 for clicks and steps, 0.25 for a collar turned by quarters. */
  step: number
}

export interface AdjusterMove {
  to: number
  /** Counts to move, signed in the adjuster's own count. */
  byCounts: number
  /** What that gives at the spring, mm; above zero is more preload. */
  givesMm: number
  /** What stays wanting because the range ends, mm at the spring; 0 when it does not. */
  shortMm: number
}

/** Preload per turn and hex flat of a thread, mm: the pitch, and a sixth of it. Source: geometry of a hexagon. */
export function perFlat(pitchMm: number): number {
  return pitchMm / 6
}

/**
 * Where to set a preload adjuster for a change at the spring, in whole steps and within its range.
 * `undefined` for an adjuster whose travel per count or step is unknown or zero.
 * @example turnAdjuster({ at: 4, mmPerCount: 1, lowest: 0, highest: 12, step: 0.5 }, 2.4) // to 6.5, gives 2.5 mm
 */
export function turnAdjuster(adjuster: PreloadAdjuster, changeMm: number): AdjusterMove | undefined {
  const { at, mmPerCount, lowest = -Infinity, highest = Infinity, step } = adjuster
  const wanted = at + changeMm / mmPerCount
  if (!(step > 0) || !(lowest <= highest)) return undefined
  // Steps are counted from where it stands: a collar at 3.3 turns has not slipped by being moved half a turn.
  const rounded = at + Math.round((wanted - at) / step) * step
  const to = Math.min(highest, Math.max(lowest, rounded))
  const byCounts = Number((to - at).toPrecision(12))
  const stopped = wanted > highest || wanted < lowest
  const move = { to: Number(to.toPrecision(12)), byCounts, givesMm: byCounts * mmPerCount, shortMm: stopped ? Math.abs(wanted - to) * Math.abs(mmPerCount) : 0 }
  return Object.values(move).every(Number.isFinite) ? move : undefined
}
