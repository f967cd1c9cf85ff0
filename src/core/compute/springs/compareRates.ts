import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, type Amount, type Outcome, type Result } from '../working/result'

export interface RateComparison {
  /** How far the implied rate lies above the fitted one, percent of the fitted one. */
  difference: Result
  /** `undefined` where neither has an uncertainty to judge by. */
  agree: boolean | undefined
}

/**
 * The rate that the sags imply against the rate of the springs fitted: 100 · (implied − fitted) / fitted.
 *
 * They agree when they are within twice the standard uncertainty of the difference, about 95 % (JCGM 100:2008, 6.3.3).
 * Where they do not, a reading, the load, the motion ratio or the mark on the spring is wrong, or friction or air took part.
 */
export function compareRates({ impliedNPerMm, fittedNPerMm }: { impliedNPerMm: Amount | undefined; fittedNPerMm: Amount | undefined }): Outcome<RateComparison> {
  const difference = derive({
    formula: 'difference = 100 · (implied − fitted) / fitted', unit: '%',
    from: { implied: given(say('rate that the sags imply'), 'N/mm', impliedNPerMm), fitted: given(say('rate of the springs fitted'), 'N/mm', fittedNPerMm) },
    by: ({ implied, fitted }) => (100 * (implied - fitted)) / fitted,
    unless: ({ fitted }) => (fitted > 0 ? undefined : say('a fitted rate above zero')),
    source: say('relative difference'),
  })
  if (isMissing(difference)) return difference
  return { difference, agree: difference.u === undefined ? undefined : Math.abs(difference.value) <= 2 * difference.u }
}
