import { say } from '../../words/say'
import { derive, given, type Given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { wantsRoom, type AirSpring } from './airSpring'

const section = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2

/**
 * `airSpring` with its working, one number at a time. Pressures are gauge, the law is of absolute ones.
 * Source: Moran & Shapiro (polytropic gas); k = n·p·A²/V as in general works on air springs.
 */
export type AirQuestion = AirSpring & { atMm: Amount | undefined; exponent: number; atmosphereBar: number }

const source = 'polytropic gas, Moran & Shapiro, section 2.2; gauge pressure on the section of the sliding tube'

/** The room above the oil with the leg fully extended, ml. */
export function airRoom(leg: AirSpring): Outcome {
  return derive({
    formula: 'room = (π / 4 · (bore² · level + slider² · travel)) / 1000 − spring', unit: 'ml',
    from: {
      bore: given(say('inner diameter where the oil level is read'), 'mm', leg.boreMm), level: given(say('oil level'), 'mm', leg.oilLevelMm),
      slider: given(say('outer diameter of the tube that slides'), 'mm', leg.sealDiameterMm), travel: given(say('travel of this end'), 'mm', leg.travelMm),
      spring: given(say('volume of the spring in it'), 'ml', leg.springVolumeMl ?? 0),
    },
    by: (v) => (section(v.bore) * v.level + section(v.slider) * v.travel) / 1000 - v.spring,
    assumptions: [say('oil level from the top of the tube, fork fully compressed, spring out')], source: say('volume of two cylinders'),
  })
}

function inputs(leg: AirQuestion): Record<'A' | 'p' | 'a' | 'V' | 'x' | 'n', Given> {
  const room = airRoom(leg)
  return {
    A: given(say('section of the tube that slides'), 'cm²', section(leg.sealDiameterMm) / 100),
    p: given(say('pressure set, by the gauge'), 'bar', leg.gaugeBar ?? 0),
    a: given(say('pressure of the air around'), 'bar', leg.atmosphereBar),
    V: given(say('room above the oil, fully extended'), 'ml', 'value' in room ? room.value : undefined),
    x: given(say('travel'), 'mm', leg.atMm),
    n: given(say('exponent of the air'), '', leg.exponent),
  }
}

function noRoom({ V, A, x, p, a }: Record<'V' | 'A' | 'x' | 'p' | 'a', number>): string | undefined {
  if (!(A > 0)) return say('tube diameters above zero')
  if (!(p + a > 0)) return say('an absolute pressure above zero')
  return V - (A * x) / 10 > 0 ? undefined : say(wantsRoom)
}

/** Force of the air of one leg at a travel, N. */
export function airForce(leg: AirQuestion, assumptions: readonly string[] = []): Outcome {
  return derive({
    formula: 'force = 10 · A · ((p + a) · (V / (V − A · x / 10))^n − a)', unit: 'N', from: inputs(leg),
    by: ({ A, p, a, V, x, n }) => 10 * A * ((p + a) * (V / (V - (A * x) / 10)) ** n - a),
    unless: noRoom, assumptions, source,
  })
}

/** What the air of one leg adds to its rate there, N/mm. */
export function airRate(leg: AirQuestion, assumptions: readonly string[] = []): Outcome {
  return derive({
    formula: 'rate = n · (p + a) · (V / (V − A · x / 10))^n · A² / (V − A · x / 10)', unit: 'N/mm', from: inputs(leg),
    by: ({ A, p, a, V, x, n }) => (n * (p + a) * (V / (V - (A * x) / 10)) ** n * A ** 2) / (V - (A * x) / 10),
    unless: noRoom, assumptions, source,
  })
}

/** What its gauge would show there, bar. */
export function airPressure(leg: AirQuestion, assumptions: readonly string[] = []): Outcome {
  return derive({
    formula: 'gauge = (p + a) · (V / (V − A · x / 10))^n − a', unit: 'bar', from: inputs(leg),
    by: ({ A, p, a, V, x, n }) => (p + a) * (V / (V - (A * x) / 10)) ** n - a,
    unless: noRoom, assumptions, source,
  })
}
