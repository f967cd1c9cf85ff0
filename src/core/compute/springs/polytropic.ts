/**
 * A gas that is squeezed: p·Vⁿ = constant. All pressures absolute, in any one unit; n = 1 slow (isothermal) to 1.4 fast
 * (adiabatic, air). Source: Moran & Shapiro, Fundamentals of Engineering Thermodynamics, section 2.2.
 */
export interface Squeeze {
  pressureAbs: number
  volume: number
  newVolume: number
  exponent: number
}

/** The absolute pressure after: p₂ = p₁ · (V₁ / V₂)ⁿ. */
export function polytropicPressure({ pressureAbs, volume, newVolume, exponent }: Squeeze): number {
  return pressureAbs * (volume / newVolume) ** exponent
}

/** The work that the gas gives when it expands, in pressure times volume: (p₂V₂ − p₁V₁) / (1 − n), or p₁V₁ ln(V₂/V₁) for n = 1. */
export function polytropicWork(squeeze: Squeeze): number {
  const { pressureAbs, volume, newVolume, exponent } = squeeze
  if (exponent === 1) return pressureAbs * volume * Math.log(newVolume / volume)
  return (polytropicPressure(squeeze) * newVolume - pressureAbs * volume) / (1 - exponent)
}

/** The absolute temperature after, K: T₂ = T₁ · (p₂ / p₁)^((n − 1) / n). */
export function polytropicTemperature({ kelvin, pressureRatio, exponent }: { kelvin: number; pressureRatio: number; exponent: number }): number {
  return kelvin * pressureRatio ** ((exponent - 1) / exponent)
}
