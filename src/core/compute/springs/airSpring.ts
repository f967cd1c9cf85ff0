import { phrase, say } from '../../words/say'
import { isMissing, type Outcome } from '../working/result'
import { polytropicPressure } from './polytropic'

/** One fork leg with air above its oil. */
export interface AirSpring {
  /** Outer diameter of the tube that slides, at the seal, mm: its section is what travel displaces and pressure acts on. */
  sealDiameterMm: number
  /** Inner diameter of the tube that the oil level is measured in, mm. */
  boreMm: number
  /** Oil level: from the top of that tube down to the oil, fork fully compressed, spring out, mm. A smaller number is more oil. */
  oilLevelMm: number
  travelMm: number
  /** What the spring takes of the room above the oil, ml; 0 when unknown. */
  springVolumeMl?: number
  /** Pressure set with the wheel off the ground, bar gauge. */
  gaugeBar?: number
  /** Air pressure around, bar; 1.01325 by default. */
  atmosphereBar?: number
  /** 1 for slow movement, as in a reading of sag, to 1.4 for a fast stroke; 1.2 by default, our own choice. */
  exponent?: number
}

export interface AirSpringAt {
  /** Gauge pressure, bar. */
  gaugeBar: number
  /** Force on the leg, N: gauge pressure on the section of the sliding tube. */
  forceN: number
  /** What the air adds to the rate, N/mm: n · p_abs · A² / V. */
  rateNPerMm: number
  volumeMl: number
}

/** Beyond these a number is no fork's but a slip of the pen, and would run on into numbers without end. */
const [smallestMm, largestMm, largestBar] = [0.1, 10_000, 1000]

const section = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2

/**
 * The air of a fork leg as a spring, at any travel from fully extended.
 *
 * V(x) = A_bore · level − V_spring + A_seal · (travel − x); p_abs · Vⁿ = constant; F = (p_abs − p_atm) · A_seal
 *
 * The set pressure is gauge, and only the law is in absolute pressure. Less gap is more oil and a stiffer end of the
 * stroke; near the top it changes next to nothing.
 * Source: Moran & Shapiro (polytropic gas); k = n·p·A²/V as in general works on air springs.
 */
export function airSpring(leg: AirSpring): Outcome<{ at: (travelMm: number) => AirSpringAt }> {
  const { gaugeBar = 0, atmosphereBar = 1.01325, exponent = 1.2 } = leg
  const problem = findProblem(leg, exponent, gaugeBar + atmosphereBar)
  if (problem) return { missing: [problem] }
  const area = section(leg.sealDiameterMm)
  const volumeAt = (x: number) => compressedVolume(leg) + area * (leg.travelMm - x)
  const extended = { pressureAbs: gaugeBar + atmosphereBar, volume: volumeAt(0), exponent }
  return {
    at(x) {
      const volume = volumeAt(x)
      const pressureAbs = polytropicPressure({ ...extended, newVolume: volume })
      const gauge = pressureAbs - atmosphereBar
      // 1 bar is 0.1 N/mm²
      return { gaugeBar: gauge, forceN: 0.1 * gauge * area, rateNPerMm: (0.1 * exponent * pressureAbs * area ** 2) / volume, volumeMl: volume / 1000 }
    },
  }
}

/** What is left above the oil when the fork is fully compressed, mm³. */
function compressedVolume({ boreMm, oilLevelMm, springVolumeMl = 0 }: AirSpring): number {
  return section(boreMm) * oilLevelMm - 1000 * springVolumeMl
}

/** What is missing where oil and spring leave the air no volume at the end of the travel: said by `say`. */
export const wantsRoom = phrase('room for the air: the oil and the spring fill the tube before the travel ends')

function findProblem(leg: AirSpring, exponent: number, pressureAbs: number): string | undefined {
  const { sealDiameterMm, boreMm, travelMm, oilLevelMm } = leg
  const measures = [sealDiameterMm, boreMm, travelMm, oilLevelMm]
  if (!measures.every((measure) => measure >= smallestMm && measure <= largestMm)) return say('tube diameters, oil level and travel of a fork, in mm')
  if (!(exponent >= 1 && exponent <= 1.4)) return say('an exponent of the air between 1 (slow) and 1.4 (fast)')
  if (!(pressureAbs > 0 && pressureAbs < largestBar)) return say('an absolute pressure above zero and below 1000 bar')
  return compressedVolume(leg) > 0 ? undefined : say(wantsRoom)
}

/** What a change of the oil level by `byMm` (above zero: less oil) does to the force at one place of the travel, N. */
export function forceChangeOfLevel(leg: AirSpring, byMm: number, atTravelMm: number): Outcome<{ forceN: number }> {
  const now = airSpring(leg)
  const then = airSpring({ ...leg, oilLevelMm: leg.oilLevelMm + byMm })
  if (isMissing(now)) return now
  if (isMissing(then)) return then
  return { forceN: then.at(atTravelMm).forceN - now.at(atTravelMm).forceN }
}
