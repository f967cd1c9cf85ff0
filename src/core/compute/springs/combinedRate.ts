/**
 * Rate of springs side by side, which share the deflection: k = Σ kᵢ. Unequal fork legs are such a pair.
 * @example parallelRate([50, 100]) // 150
 */
export function parallelRate(rates: readonly number[]): number {
  return rates.reduce((sum, rate) => sum + rate, 0)
}

/**
 * Rate of springs on top of each other, which share the force: 1/k = Σ 1/kᵢ.
 * @example seriesRate([8, 12]) // 4.8
 */
export function seriesRate(rates: readonly number[]): number {
  return 1 / rates.reduce((sum, rate) => sum + 1 / rate, 0)
}
