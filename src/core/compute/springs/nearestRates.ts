/** Steps that springs are usually sold in, N/mm. Common practice, no source. */
export const usualRateStepsNPerMm = { fork: 0.5, shock: 5 } as const

/** The rates sold just below and just above; both the same where the rate is one of the steps. */
export interface NearestRates {
  below: number
  above: number
  nearest: number
}

/**
 * The rates of a series with a constant step that enclose a rate, N/mm; `undefined` for a rate or step not above zero.
 * @example nearestRates(9.3, 0.5) // { below: 9, above: 9.5, nearest: 9.5 }
 */
export function nearestRates(rateNPerMm: number, stepNPerMm: number): NearestRates | undefined {
  if (!(rateNPerMm > 0) || !(stepNPerMm > 0) || !Number.isFinite(rateNPerMm / stepNPerMm)) return undefined
  const steps = rateNPerMm / stepNPerMm
  // A rate that is a step but for the last bits of its division counts as one.
  const onStep = Math.abs(steps - Math.round(steps)) < 1e-9
  const times = (count: number) => Number((count * stepNPerMm).toPrecision(12))
  const below = times(onStep ? Math.round(steps) : Math.floor(steps))
  const above = times(onStep ? Math.round(steps) : Math.ceil(steps))
  return { below, above, nearest: rateNPerMm - below < above - rateNPerMm ? below : above }
}
