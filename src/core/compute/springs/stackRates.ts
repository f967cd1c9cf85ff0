import { phrase, say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

export interface Stack {
  softRateNPerMm: Amount | undefined
  stiffRateNPerMm: Amount | undefined
  softTravelMm: Amount | undefined
}

const soft = (rate: Amount | undefined) => given(say('rate of the soft spring'), 'N/mm', rate)
const stiff = (rate: Amount | undefined) => given(say('rate of the stiff spring'), 'N/mm', rate)
const source = phrase('force balance of springs in series')
const positive = (values: Record<string, number>): string | undefined => (Object.values(values).every((value) => value > 0) ? undefined : say('rates and a travel above zero'))

/**
 * Rate of a dual-rate stack before its soft spring stops, N/mm: both springs in series.
 * `crossOver` gives the same as plain numbers. Source: force balance of springs in series.
 * @example firstRate({ softRateNPerMm: 8, stiffRateNPerMm: 12 }) // 4.8 N/mm
 */
export function firstRate({ softRateNPerMm, stiffRateNPerMm }: Pick<Stack, 'softRateNPerMm' | 'stiffRateNPerMm'>): Outcome {
  return derive({
    formula: 'rate = 1 / (1 / soft + 1 / stiff)', unit: 'N/mm', from: { soft: soft(softRateNPerMm), stiff: stiff(stiffRateNPerMm) },
    by: (v) => 1 / (1 / v.soft + 1 / v.stiff), unless: positive, source,
  })
}

/** Its rate after that, N/mm: the stiff spring alone. Source: as above. */
export function secondRate({ stiffRateNPerMm }: Pick<Stack, 'stiffRateNPerMm'>): Outcome {
  return derive({
    formula: 'rate = stiff', unit: 'N/mm', from: { stiff: stiff(stiffRateNPerMm) }, by: (v) => v.stiff, unless: positive,
    assumptions: [say('the soft spring stops dead')], source,
  })
}

/**
 * Where in the travel of the wheel the rate changes, mm from fully extended:
 * (travel · (1 + soft / stiff) − preload) / m, m being spring over wheel travel and 1 in a fork.
 * Below zero: the preload alone has used the soft spring up. Source: force balance of springs in series.
 */
export function changeTravel({ softRateNPerMm, stiffRateNPerMm, softTravelMm, preloadMm, motionRatio = 1 }: Stack & { preloadMm: Amount | undefined; motionRatio?: Amount }): Outcome {
  return derive({
    formula: 'change = (travel · (1 + soft / stiff) − preload) / m', unit: 'mm',
    from: {
      travel: given(say('travel of the soft spring'), 'mm', softTravelMm), soft: soft(softRateNPerMm), stiff: stiff(stiffRateNPerMm),
      preload: given(say('spring preload'), 'mm', preloadMm), m: given(say('motion ratio, spring to wheel'), '', motionRatio),
    },
    by: (v) => (v.travel * (1 + v.soft / v.stiff) - v.preload) / v.m,
    unless: (v) => positive({ soft: v.soft, stiff: v.stiff, travel: v.travel, m: v.m }),
    assumptions: [say('the soft spring stops dead')], source,
  })
}
