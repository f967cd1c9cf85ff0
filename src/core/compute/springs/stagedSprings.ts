/** A spring that joins after the stack has moved by `gapMm`. */
export interface StagedSpring {
  rateNPerMm: number
  gapMm: number
}

/**
 * Force in N of springs side by side of which some join late: F = Σ kᵢ · max(0, x − gapᵢ).
 * Source: force balance; V. B. Bhandari, Design of Machine Elements, example 10.19 (concentric springs of unequal length).
 */
export function stagedForce(springs: readonly StagedSpring[], deflectionMm: number): number {
  return springs.reduce((sum, { rateNPerMm, gapMm }) => sum + rateNPerMm * Math.max(0, deflectionMm - gapMm), 0)
}

/**
 * Deflection in mm under a force: `stagedForce` the other way round, exact, piece by piece.
 * `undefined` for a force below zero or when no spring carries it.
 */
export function stagedDeflection(springs: readonly StagedSpring[], forceN: number): number | undefined {
  if (!(forceN >= 0)) return undefined
  const joining = [...springs].sort((a, b) => a.gapMm - b.gapMm)
  for (const count of joining.keys()) {
    const working = joining.slice(0, count + 1)
    const rate = working.reduce((sum, spring) => sum + spring.rateNPerMm, 0)
    const offset = working.reduce((sum, spring) => sum + spring.rateNPerMm * spring.gapMm, 0)
    const deflection = (forceN + offset) / rate
    const next = joining[count + 1]
    if (rate > 0 && (!next || deflection <= next.gapMm)) return deflection
  }
  return undefined
}
