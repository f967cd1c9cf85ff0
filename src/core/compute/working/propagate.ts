import type { Measured } from './result'

/** Correlation coefficient `r` (-1 to 1) between the inputs at two places of the list. */
export interface Correlation {
  between: readonly [number, number]
  r: number
}

export interface Propagated {
  /** Combined standard uncertainty of the result. */
  u: number
  /** Signed contribution of each input, in the result's unit; 0 where the input has no uncertainty. */
  contributions: number[]
}

/**
 * Combined standard uncertainty of `by(inputs)` to first order.
 *
 * u² = Σ Zᵢ² + 2 Σ r(i,j) Zᵢ Zⱼ with Zᵢ = ½ [f(xᵢ + uᵢ) − f(xᵢ − uᵢ)]
 *
 * Assumes that `by` is close to linear within one standard uncertainty, and inputs independent but for `correlations`.
 * `undefined` when no input has an uncertainty, or `by` leaves its domain within one.
 * Source: JCGM 100:2008, 5.1.2 and 5.1.3 note 2 (numerical contributions), 5.2.2 (correlated inputs).
 * @example propagate(([a, b]) => a - b, [{ value: 5, u: 3 }, { value: 2, u: 4 }])?.u // 5
 */
export function propagate(
  by: (values: readonly number[]) => number,
  inputs: readonly Measured[],
  correlations: readonly Correlation[] = [],
): Propagated | undefined {
  if (!inputs.some(({ u }) => u)) return undefined
  const moved = inputs.map(({ value }) => value)
  const contributions = inputs.map(({ value, u = 0 }, place) => {
    if (u === 0) return 0
    moved[place] = value + u
    const above = by(moved)
    moved[place] = value - u
    const below = by(moved)
    moved[place] = value
    return (above - below) / 2
  })
  const independent = contributions.reduce((sum, part) => sum + part ** 2, 0)
  const shared = correlations.reduce((sum, { between: [i, j], r }) => sum + 2 * r * contributions[i]! * contributions[j]!, 0)
  const u = Math.sqrt(Math.max(0, independent + shared))
  return Number.isFinite(u) ? { u, contributions } : undefined
}
