import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Measured, Outcome } from '../working/result'
import { usualShearModulusGPa } from './rateFromWire'

/** A diameter taken with a calliper to ± 0.05 mm, every place alike. Our own choice. */
export function readCalliper(mm: number): Measured {
  return { value: mm, u: 0.05 / Math.sqrt(3) }
}

/**
 * Rate of a round-wire coil spring from what a calliper reads on it, N/mm: `rateFromWire` with the mean coil diameter
 * taken as the outer one less one wire. Both terms move together with the wire, which the uncertainty takes into account.
 * Source: Shigley’s Mechanical Engineering Design, chapter 10.
 * @example rateFromOutside({ wireMm: 2.5, outerMm: 31, activeCoils: 13, shearModulusGPa: 81 }) // 1.314 N/mm
 */
export function rateFromOutside({ wireMm, outerMm, activeCoils, shearModulusGPa }: {
  wireMm: Amount | undefined
  outerMm: Amount | undefined
  activeCoils: Amount | undefined
  shearModulusGPa?: Amount
}): Outcome {
  return derive({
    formula: 'rate = 1000 · G · d⁴ / (8 · (o − d)³ · n)', unit: 'N/mm',
    from: {
      G: given(say('shear modulus'), 'GPa', shearModulusGPa ?? usualShearModulusGPa),
      d: given(say('wire diameter of the spring'), 'mm', wireMm),
      o: given(say('outer diameter of the spring'), 'mm', outerMm),
      n: given(say('active coils of the spring'), '', activeCoils),
    },
    by: ({ G, d, o, n }) => (1000 * G * d ** 4) / (8 * (o - d) ** 3 * n),
    unless: ({ G, d, o, n }) => (Math.min(G, d, o, n) <= 0 ? say('spring measures above zero') : 2 * d >= o ? say('a coil wider than its wire') : undefined),
    assumptions: [say('a constant pitch, and coils that do not touch'), ...(shearModulusGPa === undefined ? [say('shear modulus of 80 ± 2 GPa, usual for spring steel, from memory')] : [])],
    source: 'Shigley’s Mechanical Engineering Design, chapter 10',
  })
}
