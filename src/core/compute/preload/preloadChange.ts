import { say } from '../../words/say'
import { derive, given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/**
 * Change of spring preload that moves a sag to a target, mm at the spring: (sag − target) · m. Above zero: more preload.
 *
 * `motionRatio` m is spring travel over what the sag is read along: 1 for a fork read along its tubes, shock travel over
 * wheel travel at the rear. All springs of the end take the same change.
 * Assumes the same ratio from one sag to the other, and an end off its top stop. The rate does not change.
 * Source: sag = load / rate − preload, G. Byrnes, Sag and Preload II.
 * @example preloadChange({ sagMm: 40, targetMm: 35, motionRatio: 0.5 }) // 2.5 mm more
 */
export function preloadChange({ sagMm, targetMm, motionRatio }: {
  sagMm: Amount | undefined
  targetMm: Amount | undefined
  motionRatio: Amount | undefined
}): Outcome {
  return derive({
    formula: 'change = (sag − target) · m', unit: 'mm',
    from: {
      sag: given(say('sag'), 'mm', sagMm),
      target: given(say('target of the sag'), 'mm', targetMm),
      m: given(say('motion ratio, spring to sag'), '', motionRatio),
    },
    by: ({ sag, target, m }) => (sag - target) * m,
    unless: ({ m }) => (m > 0 ? undefined : say('a motion ratio above zero')),
    assumptions: [say('the motion ratio is the same over the change'), say('the end is off its top stop')],
    source: 'G. Byrnes, Sag and Preload II (preload = total compression − sag)',
  })
}

/**
 * The ratio to use as `motionRatio` for a fork of which not every sprung leg has an adjuster: Σk / Σk_adjustable, 1 when
 * all have one. A leg that works alone has to take that much more. `undefined` when no leg with a spring can be adjusted.
 * Source: force balance of springs side by side.
 */
export function forkPreloadRatio(legs: readonly { rateNPerMm: number; adjustable: boolean }[]): number | undefined {
  const sum = (of: readonly { rateNPerMm: number }[]) => of.reduce((total, leg) => total + leg.rateNPerMm, 0)
  const adjustable = sum(legs.filter((leg) => leg.adjustable))
  return adjustable > 0 ? sum(legs) / adjustable : undefined
}

/** A preload as sag sees it, mm at the wheel, as it is at the spring: p · m. Source: definition of the motion ratio. */
export function preloadAtSpring({ wheelPreloadMm, motionRatio }: { wheelPreloadMm: Amount | undefined; motionRatio: Amount | undefined }): Outcome {
  return derive({
    formula: 'preload = p · m', unit: 'mm',
    from: { p: given(say('preload as sag sees it'), 'mm', wheelPreloadMm), m: given(say('motion ratio, spring to sag'), '', motionRatio) },
    by: ({ p, m }) => p * m,
    unless: ({ m }) => (m > 0 ? undefined : say('a motion ratio above zero')),
    assumptions: [say('the motion ratio is the same over the travel to the sag')], source: say('definition of the motion ratio'),
  })
}
