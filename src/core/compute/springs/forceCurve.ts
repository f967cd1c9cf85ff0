/** One contribution to a force over travel. */
export interface ForcePart {
  name: string
  /** Force in N at a travel in mm from fully extended. */
  at: (travelMm: number) => number
}

export interface ForceRow {
  travelMm: number
  /** In the order of the parts, N. */
  partsN: number[]
  totalN: number
}

/** Number of steps over the travel where nobody asks for another: fine enough for a chart, few enough for a table. */
export const usualCurveSteps = 20

/**
 * Force over travel as rows for a chart and the table behind it, from fully extended to fully compressed.
 * A place where a part has no finite force is left out; no rows for a travel not above zero.
 */
export function forceCurve(travelMm: number, parts: readonly ForcePart[], steps: number = usualCurveSteps): ForceRow[] {
  if (!(travelMm > 0) || !(steps >= 1)) return []
  return Array.from({ length: Math.floor(steps) + 1 }, (_, step): ForceRow => {
    const at = (travelMm * step) / Math.floor(steps)
    const partsN = parts.map((part) => part.at(at))
    return { travelMm: at, partsN, totalN: partsN.reduce((sum, force) => sum + force, 0) }
  }).filter((row) => Number.isFinite(row.totalN))
}

/** A coil spring as a part: k · (p + x). */
export function coilPart(rateNPerMm: number, preloadMm: number, name = 'spring'): ForcePart {
  return { name, at: (travelMm) => rateNPerMm * (preloadMm + travelMm) }
}
