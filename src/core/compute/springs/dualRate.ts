import { seriesRate } from './combinedRate'

/** A short soft spring on a long stiff one, until the soft one stops. */
export interface DualRateStack {
  softRateNPerMm: number
  stiffRateNPerMm: number
  /** How far the soft spring goes until its coils or its stop meet, mm. */
  softTravelMm: number
}

export interface CrossOver {
  firstRateNPerMm: number
  secondRateNPerMm: number
  /** Travel of the whole stack, mm, and force, N, at which the rate changes. */
  atMm: number
  atN: number
}

/**
 * Where a dual-rate stack changes over: both springs in series first, then the stiff one alone.
 *
 * force at the change = k_soft · travel_soft; travel at the change = travel_soft · (1 + k_soft / k_stiff)
 * Assumes the soft spring stops dead. Source: force balance of springs in series.
 */
export function crossOver({ softRateNPerMm, stiffRateNPerMm, softTravelMm }: DualRateStack): CrossOver {
  return {
    firstRateNPerMm: seriesRate([softRateNPerMm, stiffRateNPerMm]),
    secondRateNPerMm: stiffRateNPerMm,
    atMm: softTravelMm * (1 + softRateNPerMm / stiffRateNPerMm),
    atN: softRateNPerMm * softTravelMm,
  }
}

/** Force in N of the stack when it is pressed together by `deflectionMm`; none while it is loose. */
export function dualRateForce(stack: DualRateStack, deflectionMm: number): number {
  const change = crossOver(stack)
  if (deflectionMm <= 0) return 0
  return deflectionMm <= change.atMm
    ? change.firstRateNPerMm * deflectionMm
    : change.atN + change.secondRateNPerMm * (deflectionMm - change.atMm)
}
