import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Force in N that a spring pushes with while its end is still on the top stop: F = k · p.
 * Preload changes this force and the ride height; the rate stays what it is.
 * Source: linear spring.
 * @example preloadForce({ rateNPerMm: 9, preloadMm: 10 }) // 90 N
 */
export function preloadForce({ rateNPerMm, preloadMm }: { rateNPerMm: Amount | undefined; preloadMm: Amount | undefined }): Outcome {
  return derive({
    formula: 'force = k · p', unit: 'N',
    from: { k: given(say('spring rate'), 'N/mm', rateNPerMm), p: given(say('spring preload'), 'mm', preloadMm) },
    by: ({ k, p }) => k * p,
    source: say('linear spring'),
  })
}

/** One leg of a fork: its spring and how far that is preloaded. */
export interface LegSpring {
  rateNPerMm: number
  preloadMm: number
}

/**
 * The preload in mm that both legs would need to have for the same force as unequal ones have: Σ kᵢ·pᵢ / Σ kᵢ.
 * `undefined` without a spring. Source: force balance of springs side by side.
 * @example evenPreload([{ rateNPerMm: 9, preloadMm: 10 }, { rateNPerMm: 10, preloadMm: 0 }]) // 4.74 mm
 */
export function evenPreload(legs: readonly LegSpring[]): number | undefined {
  const rate = legs.reduce((sum, leg) => sum + leg.rateNPerMm, 0)
  return rate > 0 ? legs.reduce((sum, leg) => sum + leg.rateNPerMm * leg.preloadMm, 0) / rate : undefined
}
