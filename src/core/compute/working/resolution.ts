import type { Measured } from './result'

/**
 * Standard uncertainty of a reading that is somewhere within ± `halfWidth`, every place alike: u = a / √3.
 * Source: JCGM 100:2008, 4.3.7 (rectangular distribution).
 * @example resolutionUncertainty(1) // 0.577: a tape read to ±1 mm
 */
export function resolutionUncertainty(halfWidth: number): number {
  return halfWidth / Math.sqrt(3)
}

/** The half width taken for a length read off a tape or rule when nobody says otherwise. Our own choice. */
export const usualReadingHalfWidthMm = 1

/** A length read to ± `halfWidthMm`, with its standard uncertainty, in mm. */
export function readLength(valueMm: number, halfWidthMm: number = usualReadingHalfWidthMm): Measured {
  return { value: valueMm, u: resolutionUncertainty(halfWidthMm) }
}
