import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Measured, Outcome } from '../working/result'

/** Shear modulus taken for spring steel wire when none is given, GPa: 78 to 82 by grade, from memory. */
export const usualShearModulusGPa: Measured = { value: 80, u: 2 / Math.sqrt(3) }

/**
 * Rate of a round-wire coil spring, N/mm: k = G·d⁴ / (8·D³·n).
 *
 * `d` wire diameter, `D` mean coil diameter (outer diameter less one wire), `n` coils that work (for ground ends the total
 * less one or two). All mm; the modulus in GPa.
 * Assumes a constant pitch and coils that do not touch. The fourth and third powers make the diameters count: read them
 * with a calliper.
 * Source: Shigley’s Mechanical Engineering Design, chapter 10.
 * @example rateFromWire({ wireMm: 3, meanDiameterMm: 30, activeCoils: 10, shearModulusGPa: 80 }) // 3 N/mm
 */
export function rateFromWire({ wireMm, meanDiameterMm, activeCoils, shearModulusGPa }: {
  wireMm: Amount | undefined
  meanDiameterMm: Amount | undefined
  activeCoils: Amount | undefined
  shearModulusGPa?: Amount
}): Outcome {
  return derive({
    formula: 'rate = 1000 · G · d⁴ / (8 · D³ · n)', unit: 'N/mm',
    from: {
      G: given(say('shear modulus'), 'GPa', shearModulusGPa ?? usualShearModulusGPa),
      d: given(say('wire diameter'), 'mm', wireMm),
      D: given(say('mean coil diameter'), 'mm', meanDiameterMm),
      n: given(say('active coils'), '', activeCoils),
    },
    by: ({ G, d, D, n }) => (1000 * G * d ** 4) / (8 * D ** 3 * n),
    unless: ({ G, d, D, n }) => (Math.min(G, d, D, n) <= 0 ? say('spring measures above zero') : d >= D ? say('a coil wider than its wire') : undefined),
    assumptions: shearModulusGPa === undefined ? [say('shear modulus of 80 ± 2 GPa, usual for spring steel, from memory')] : [],
    source: 'Shigley’s Mechanical Engineering Design, chapter 10',
  })
}
