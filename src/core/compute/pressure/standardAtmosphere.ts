/** Pressure of the air at sea level, bar. US Standard Atmosphere 1976. */
export const seaLevelBar = 1.01325

/**
 * Pressure of the air at an altitude, bar: 1.01325 · (1 − h / 44329)^5.255876.
 * For the troposphere, up to 11 000 m; `undefined` outside -500…11 000 m. The weather moves it by some 3 % either way.
 * Source: US Standard Atmosphere 1976.
 * @example standardAtmosphere(2000) // 0.794944 bar
 */
export function standardAtmosphere(altitudeM: number): number | undefined {
  return altitudeM >= -500 && altitudeM <= 11_000 ? seaLevelBar * (1 - altitudeM / 44_329) ** 5.255876 : undefined
}
