import type { Measured } from '../working/result'
import { judgeSag, type SagJudgement } from '../sag/judgeSag'
import type { SagTarget } from '../sag/sagTarget'

export interface SpringJudgement {
  verdict: 'fits' | 'tooSoft' | 'tooStiff' | 'unknown'
  /** Preload to be changed before anything is said of the spring: the rider sag is not where it should be. */
  preloadFirst: 'more' | 'less' | undefined
  /** Bike sag once preload has put the rider sag right, mm. */
  bikeSagThenMm: number
  /** Against the window of the bike sag. */
  then: SagJudgement
}

type Window = Pick<SagTarget, 'lowMm' | 'highMm'>

/**
 * The two-sag rule: whether a spring suits its load, from the pair of sags and never from one of them.
 *
 * Preload is first imagined to bring the rider sag into its window, to the nearest place. With the rider sag right, a
 * bike sag that is too small means a spring too soft (held up by preload), one too large a spring too stiff.
 * The four corners: both sags large, more preload; both small, less preload; bike small and rider large, too soft;
 * bike large and rider small, too stiff.
 * `unknown` where the bike stands on its top stop and less preload would be needed: then it has to be read again.
 * Source: sag_bike = sag_rider − rider's load / rate, which rises with the rate at a given rider sag.
 */
export function judgeSpring({ bikeSagMm, riderSagMm, bikeWindow, riderWindow }: {
  bikeSagMm: Measured
  riderSagMm: Measured
  bikeWindow: Window
  riderWindow: Window
}): SpringJudgement {
  const rider = riderSagMm.value
  const shift = Math.min(riderWindow.highMm, Math.max(riderWindow.lowMm, rider)) - rider
  const bikeSagThenMm = bikeSagMm.value + shift
  const u = Math.hypot(bikeSagMm.u ?? 0, shift === 0 ? 0 : riderSagMm.u ?? 0)
  const then = judgeSag({ value: bikeSagThenMm, ...(u > 0 ? { u } : {}) }, bikeWindow)
  const preloadFirst = shift < 0 ? 'more' : shift > 0 ? 'less' : undefined
  const onTopStop = bikeSagMm.value <= 0 && then.where !== 'below'
  const verdict = onTopStop ? 'unknown' : ({ below: 'tooSoft', within: 'fits', above: 'tooStiff' } as const)[then.where]
  return { verdict, preloadFirst, bikeSagThenMm, then }
}
