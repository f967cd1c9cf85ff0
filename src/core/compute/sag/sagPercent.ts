import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Sag as a share of the travel, in percent: 100 · sag / travel.
 * Both along the same line: the fork tubes in front, the vertical at the rear wheel.
 * @example sagPercent({ sagMm: 100, travelMm: 300 }) // 33.3 %
 */
export function sagPercent({ sagMm, travelMm }: { sagMm: Amount | undefined; travelMm: Amount | undefined }): Outcome {
  return derive({
    formula: 'share = 100 · sag / travel', unit: '%',
    from: { sag: given(say('sag'), 'mm', sagMm), travel: given(say('travel of this end'), 'mm', travelMm) },
    by: ({ sag, travel }) => (100 * sag) / travel,
    unless: ({ travel }) => (travel > 0 ? undefined : say('a travel above zero')),
    source: 'a manufacturer’s competition handbook of 2007, p. 94 (sag told as a part of the travel)',
  })
}
