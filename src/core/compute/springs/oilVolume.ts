import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Oil to draw off (above zero) or to pour in (below zero) per leg for a change of oil level, ml: π/4 · bore² · change / 1000.
 *
 * A larger level number is a larger gap, so less oil. Assumes the level stands in a plain bore, the spring out.
 * Source: volume of a cylinder.
 * @example oilForLevelChange({ boreMm: 43, changeMm: 10 }) // 14.52 ml
 */
export function oilForLevelChange({ boreMm, changeMm }: { boreMm: Amount | undefined; changeMm: Amount | undefined }): Outcome {
  return derive({
    formula: 'oil = π / 4 · bore² · change / 1000', unit: 'ml',
    from: { bore: given(say('bore'), 'mm', boreMm), change: given(say('change of oil level'), 'mm', changeMm) },
    by: ({ bore, change }) => ((Math.PI / 4) * bore ** 2 * change) / 1000,
    unless: ({ bore }) => (bore > 0 ? undefined : say('a bore above zero')),
    assumptions: [say('spring out, fork fully compressed')],
    source: say('volume of a cylinder'),
  })
}

/** Change of oil level in mm that an amount of oil makes, per leg: `oilForLevelChange` the other way round. */
export function levelChangeForOil({ boreMm, oilMl }: { boreMm: Amount | undefined; oilMl: Amount | undefined }): Outcome {
  return derive({
    formula: 'change = 1000 · oil / (π / 4 · bore²)', unit: 'mm',
    from: { bore: given(say('bore'), 'mm', boreMm), oil: given(say('oil drawn off'), 'ml', oilMl) },
    by: ({ bore, oil }) => (1000 * oil) / ((Math.PI / 4) * bore ** 2),
    assumptions: [say('spring out, fork fully compressed')],
    source: say('volume of a cylinder'),
  })
}

/**
 * How far a tubular spacer under the oil raises its level, mm: length · (outer² − inner²) / bore².
 * Source: volume of a tube in the volume of a cylinder.
 * @example spacerDisplacement({ lengthMm: 200, outerMm: 35, innerMm: 30, boreMm: 36.6 }) // 48.52 mm
 */
export function spacerDisplacement({ lengthMm, outerMm, innerMm, boreMm }: {
  lengthMm: Amount | undefined
  outerMm: Amount | undefined
  innerMm: Amount | undefined
  boreMm: Amount | undefined
}): Outcome {
  return derive({
    formula: 'rise = length · (outer² − inner²) / bore²', unit: 'mm',
    from: {
      length: given(say('spacer length'), 'mm', lengthMm),
      outer: given(say('spacer outer diameter'), 'mm', outerMm),
      inner: given(say('spacer inner diameter'), 'mm', innerMm),
      bore: given(say('bore'), 'mm', boreMm),
    },
    by: ({ length, outer, inner, bore }) => (length * (outer ** 2 - inner ** 2)) / bore ** 2,
    unless: ({ outer, inner, bore }) => (outer > inner && bore >= outer ? undefined : say('a spacer that fits the bore')),
    source: say('volume of a tube over the section of the bore'),
  })
}
