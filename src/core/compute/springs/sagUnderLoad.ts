/** An end as a straight line: load per mm of sag, and its preload as sag sees it, mm at the wheel. */
export interface LinearEnd {
  wheelRateNPerMm: number
  wheelPreloadMm: number
}

export interface LoadedSag {
  sagMm: number
  /** The load does not even overcome the preload: the end stands on its top stop, and the sag is zero. */
  toppedOut: boolean
}

/**
 * Sag in mm of a linear end under a sprung load: W / k − p, and zero on the top stop.
 * Source: linear spring, F₀ = k·p. `undefined` for a rate that is not above zero.
 * @example sagUnderLoad({ wheelRateNPerMm: 100, wheelPreloadMm: 1 }, 300) // 2
 */
export function sagUnderLoad({ wheelRateNPerMm, wheelPreloadMm }: LinearEnd, loadN: number): LoadedSag | undefined {
  const sagMm = loadN / wheelRateNPerMm - wheelPreloadMm
  if (!(wheelRateNPerMm > 0) || !Number.isFinite(sagMm)) return undefined
  return sagMm > 0 ? { sagMm, toppedOut: false } : { sagMm: 0, toppedOut: true }
}
