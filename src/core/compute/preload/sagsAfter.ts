/** Both sags of an end, mm; either may be unknown. */
export interface Sags {
  bikeMm?: number
  riderMm?: number
}

export interface SagsAfter extends Sags {
  /** Load cases that come to stand on the top stop, their sag zero. */
  toppingOut: ('bike' | 'rider')[]
}

/**
 * Both sags after a change of preload at the spring, mm: each less change / m, and never below zero.
 *
 * The difference of the two stays as it was while neither tops out: preload does not change the rate.
 * An end that stands on its top stop already may need more than this says to come off it.
 * Source: sag = load / rate − preload.
 * @example sagsAfter({ bikeMm: 25, riderMm: 36 }, 2, 0.5) // bike 21, rider 32
 */
export function sagsAfter({ bikeMm, riderMm }: Sags, changeMm: number, motionRatio: number): SagsAfter {
  const moved = (sagMm: number | undefined) => (sagMm === undefined ? undefined : sagMm - changeMm / motionRatio)
  const after = { bike: moved(bikeMm), rider: moved(riderMm) }
  const toppingOut = (['bike', 'rider'] as const).filter((load) => after[load] !== undefined && after[load] <= 0)
  return {
    ...(after.bike === undefined ? {} : { bikeMm: Math.max(0, after.bike) }),
    ...(after.rider === undefined ? {} : { riderMm: Math.max(0, after.rider) }),
    toppingOut,
  }
}
