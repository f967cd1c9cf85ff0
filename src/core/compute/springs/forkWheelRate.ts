import { say } from '../../words/say'
import { derive, given, type Given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'
import { cosDeg } from '../geometry/degrees'

interface ForkSprings {
  /** The rate of each leg that has a spring, N/mm. */
  legRatesNPerMm: readonly Amount[]
  rakeDeg: Amount | undefined
}

const legs = (rates: readonly Amount[]): Record<string, Given> =>
  Object.fromEntries(rates.map((rate, leg) => [`k${leg + 1}`, given(say('spring rate of a leg'), 'N/mm', rate)]))

const sumOf = (values: Record<string, number>, count: number): number =>
  Array.from({ length: count }, (_, leg) => values[`k${leg + 1}`]!).reduce((sum, rate) => sum + rate, 0)

function forkRate({ legRatesNPerMm, rakeDeg }: ForkSprings, power: 1 | 2, assumption: string): Outcome {
  if (legRatesNPerMm.length === 0) return { missing: [say('spring rate of the fork')] }
  const springs = legs(legRatesNPerMm)
  const sum = Object.keys(springs).join(' + ')
  return derive<string>({
    formula: `rate = (${sum}) / cos${power === 2 ? '²' : ''} ε`, unit: 'N/mm',
    from: { ...springs, ε: given(say('rake'), '°', rakeDeg) },
    by: (values) => sumOf(values, legRatesNPerMm.length) / cosDeg(values.ε!) ** power,
    assumptions: [assumption, say('springs alone, without the air above the oil')],
    source: 'G. Byrnes, Leverage and Linkages (springs lie along the steering axis); statics of a sliding guide',
  })
}

/**
 * The springs of a fork as a tape along the tubes sees them: N of load on the tyre per mm along the tubes.
 *
 * rate = Σk / cos ε, since only the part of the load along the tubes compresses the springs.
 * This is the one to hold against the rate that two sags read along the tubes imply.
 */
export function forkRateAlongTubes(springs: ForkSprings): Outcome {
  return forkRate(springs, 1, say('sag is read along the fork tubes'))
}

/**
 * The vertical rate of a fork at its axle: N of load per mm that the axle rises.
 *
 * rate = Σk / cos² ε; at 24° some 20 % above the springs.
 * @example forkRateVertical({ legRatesNPerMm: [9, 9], rakeDeg: 24 }) // 21.568 N/mm
 */
export function forkRateVertical(springs: ForkSprings): Outcome {
  return forkRate(springs, 2, say('the axle’s movement is read vertically'))
}
