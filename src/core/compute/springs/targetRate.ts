import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * The wheel rate that puts both sags on their targets, N/mm: rider's load / (rider sag − bike sag). `springForTargets`
 * without the preload, and so without the load of the bike alone. Source: two loads on a linear spring.
 * @example targetRate({ riderLoadN: 450, bikeSagMm: 10, riderSagMm: 35 }) // 18 N/mm
 */
export function targetRate({ riderLoadN, bikeSagMm, riderSagMm }: {
  riderLoadN: Amount | undefined
  bikeSagMm: Amount | undefined
  riderSagMm: Amount | undefined
}): Outcome {
  return derive({
    formula: 'rate = R / (S − B)', unit: 'N/mm',
    from: {
      R: given(say('rider’s load on this end'), 'N', riderLoadN),
      B: given(say('target of bike sag'), 'mm', bikeSagMm),
      S: given(say('target of rider sag'), 'mm', riderSagMm),
    },
    by: ({ R, B, S }) => R / (S - B),
    unless: ({ R, B, S }) => (S <= B ? say('a target of rider sag above the one of bike sag') : R <= 0 ? say('a rider’s load above zero') : undefined),
    assumptions: [say('the rate is the same over both sags')],
    source: say('two loads on a linear spring'),
  })
}
