import { say } from '../../words/say'
import { isMissing, type Amount, type Outcome } from '../working/result'
import { derive, given } from '../working/derive'
import type { Readings } from './sag'
import { sagDifference } from './sagDifference'

/**
 * The rate that the two sags imply, in N of load per mm of sag: rider's load on this end / (rider sag − bike sag).
 *
 * A straight line through two loads, so it is the mean rate between them, springs, air and linkage together.
 * Assumes that the end is off its top stop in both readings. For a fork read along its tubes it is the load on the tyre
 * per mm along the tubes: the rate of both springs together divided by the cosine of the rake.
 * Source: linear springs; the loads of both sags less each other.
 * @example impliedWheelRate({ riderLoadN: 450, bikeMm: [125], riderMm: [100] }) // 18 N/mm
 */
export function impliedWheelRate({ riderLoadN, bikeMm, riderMm }: {
  riderLoadN: Amount | undefined
  bikeMm: Readings | undefined
  riderMm: Readings | undefined
}): Outcome {
  const difference = sagDifference({ bikeMm, riderMm })
  const load = given(say('rider’s load on this end'), 'N', riderLoadN)
  if (isMissing(difference)) {
    return { missing: [...(load.measured ? [] : [load.name]), ...difference.missing] }
  }
  return derive({
    formula: 'rate = load / difference', unit: 'N/mm',
    from: { load, difference: given(say('rider sag less bike sag'), 'mm', difference) },
    by: (values) => values.load / values.difference,
    unless: (values) =>
      values.difference <= 0 ? say('a rider sag above the bike’s') : values.load <= 0 ? say('a rider’s load above zero') : undefined,
    assumptions: [say('the end is off its top stop in both readings'), say('the rate is the same over both sags'), ...difference.working.assumptions],
    source: say('linear spring: load over deflection'),
  })
}
