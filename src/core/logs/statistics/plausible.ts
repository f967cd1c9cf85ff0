/**
 * Between which mm a position can be at all: from as far out of the travel on one side as on the other, or, where no travel
 * is known, what no suspension reaches. What is beyond comes from a broken sensor or a wrong scale.
 */
export function plausible(travelMm: number | undefined): { least: number; most: number } {
  return travelMm === undefined ? { least: -500, most: 1000 } : { least: -travelMm, most: 2 * travelMm }
}
