import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { seaLevelBar } from './standardAtmosphere'

/** Zero of the absolute scale, °C. Exact by definition. */
const absoluteZeroC = -273.15

/** Absolute pressure from a gauge reading and back, both in one unit. */
export const toAbsolute = (gauge: number, atmosphere: number): number => gauge + atmosphere
export const toGauge = (absolute: number, atmosphere: number): number => absolute - atmosphere

/**
 * Gauge pressure in bar of a sealed chamber (tyre, air fork) once its temperature, the altitude, or both have changed.
 *
 * p₂ = (p₁ + pa₁) · T₂ / T₁ − pa₂, with absolute temperatures: the law is one of absolute pressure, never of the gauge's.
 * Atmospheres in bar, of sea level by default; `standardAtmosphere` gives the one of an altitude.
 * Assumes a constant volume and no air let in or out. Source: gas law at constant volume.
 * @example sealedPressure({ gaugeBar: 2, fromC: 20, toC: 60 }) // 2.411 bar
 */
export function sealedPressure({ gaugeBar, fromC, toC, fromAtmosphereBar = seaLevelBar, toAtmosphereBar }: {
  gaugeBar: Amount | undefined
  fromC: Amount | undefined
  toC: Amount | undefined
  fromAtmosphereBar?: Amount
  /** Where it is read then; the same air as before when left out. */
  toAtmosphereBar?: Amount
}): Outcome {
  // One air pressure is one number, and must move as one when its uncertainty is propagated.
  const then = toAtmosphereBar === undefined ? 'a1' : 'a2'
  return derive<string>({
    formula: `p = (p1 + a1) · (T2 + 273.15) / (T1 + 273.15) − ${then}`, unit: 'bar',
    from: {
      p1: given(say('gauge pressure'), 'bar', gaugeBar),
      a1: given(say('pressure of the air where it was read'), 'bar', fromAtmosphereBar),
      T1: given(say('temperature where it was read'), '°C', fromC),
      T2: given(say('temperature then'), '°C', toC),
      ...(toAtmosphereBar === undefined ? {} : { a2: given(say('pressure of the air then'), 'bar', toAtmosphereBar) }),
    },
    by: (v) => toGauge((toAbsolute(v.p1!, v.a1!) * (v.T2! - absoluteZeroC)) / (v.T1! - absoluteZeroC), v[then]!),
    unless: (v) =>
      Math.min(v.T1!, v.T2!) <= absoluteZeroC ? say('temperatures above absolute zero') : v.p1! + v.a1! <= 0 ? say('an absolute pressure above zero') : undefined,
    assumptions: [say('constant volume, nothing let in or out')],
    source: say('gas law at constant volume, absolute pressure and temperature'),
  })
}

/** The cold gauge pressure in bar to set now, so that the chamber has `wantedBar` at another temperature: `sealedPressure` the other way round. */
export function coldPressureFor({ wantedBar, wantedAtC, setAtC, atmosphereBar = seaLevelBar }: {
  wantedBar: Amount | undefined
  wantedAtC: Amount | undefined
  setAtC: Amount | undefined
  atmosphereBar?: Amount
}): Outcome {
  return sealedPressure({ gaugeBar: wantedBar, fromC: wantedAtC, toC: setAtC, fromAtmosphereBar: atmosphereBar })
}
