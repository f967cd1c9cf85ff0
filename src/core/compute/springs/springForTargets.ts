import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import { isMissing, type Amount, type Outcome, type Result } from '../working/result'

export interface TargetSpring {
  /** Load per mm of sag, N/mm. */
  wheelRate: Result
  /**
   * Preload as sag sees it, mm at the wheel: how much further an end without preload would sink under the same load.
   * The only one of the two that needs the bike's own sprung load.
   */
  wheelPreload: Outcome
}

/**
 * The wheel rate and the preload that meet both targets at once.
 *
 * rate = rider's load / (rider sag − bike sag); preload = bike's sprung load / rate − bike sag
 *
 * Assumes a straight line between both loads. The bike's load is what hangs on the springs: axle load without wheel,
 * brake and the lower part of the suspension. A preload below zero means that no spring of this end meets both targets.
 * Source: two loads on a linear spring, F₀ = k·p.
 */
export function springForTargets({ bikeLoadN, riderLoadN, bikeSagMm, riderSagMm }: {
  bikeLoadN: Amount | undefined
  riderLoadN: Amount | undefined
  bikeSagMm: Amount | undefined
  riderSagMm: Amount | undefined
}): Outcome<TargetSpring> {
  const W = given(say('bike’s sprung load on this end'), 'N', bikeLoadN)
  const R = given(say('rider’s load on this end'), 'N', riderLoadN)
  const B = given(say('target of bike sag'), 'mm', bikeSagMm)
  const S = given(say('target of rider sag'), 'mm', riderSagMm)
  const unless = (values: { R: number; B: number; S: number }) =>
    values.S <= values.B ? say('a target of rider sag above the one of bike sag') : values.R <= 0 ? say('a rider’s load above zero') : undefined
  const assumptions = [say('the rate is the same over both sags'), say('loads are sprung loads')]
  const source = say('two loads on a linear spring')
  const wheelRate = derive({
    formula: 'rate = R / (S − B)', unit: 'N/mm', from: { R, B, S }, by: (v) => v.R / (v.S - v.B), unless, assumptions, source,
  })
  const wheelPreload = derive({
    formula: 'preload = W · (S − B) / R − B', unit: 'mm', from: { W, R, B, S },
    by: (v) => (v.W * (v.S - v.B)) / v.R - v.B, unless, assumptions, source,
  })
  return isMissing(wheelRate) ? wheelRate : { wheelRate, wheelPreload }
}
