import { say } from '../../words/say'
import { isLogProblem, type LogProblem } from '../problem'

/** How far apart the samples of a log are. */
export interface Spacing {
  /** Of most samples, s. */
  s: number
  /** How far a sample may be from its place to count as being there, s: rounding of the time column, or 2 % of the spacing. */
  toleranceS: number
}

/** Samples apart by more than so many spacings have a gap between them, across which nothing is drawn. */
export const gapSpacings = 5.5

const shareOfSpacing = 0.02

/**
 * The spacing of the first rows of a log: the mean of the steps within half and one and a half of their median.
 * Times are in s.
 */
export function findSpacing(times: readonly number[], lines: readonly number[]): Spacing | LogProblem {
  const steps = times.slice(1).map((time, at) => time - times[at]!)
  const forward = steps.filter((step) => step > 0).sort((a, b) => a - b)
  if (forward.length === 0) {
    return { ...(lines[0] === undefined ? {} : { line: lines[0] }), message: say('time does not move on in the first rows; name the column that holds it, or the `rate` where there is none') }
  }
  if (forward.length * 2 < steps.length) {
    const at = steps.findIndex((step) => step <= 0)
    return { line: lines[at + 1]!, message: say('time stands still from one row to the next in most of the first rows: its column is too coarse; name the `rate` in Hz instead') }
  }
  const median = forward[forward.length >> 1]!
  const usual = forward.filter((step) => step > median / 2 && step < median * 1.5)
  // Nine digits of the rate: more are only the last bits of the times, and would move what lies on a limit.
  const s = 1 / Number((usual.length / usual.reduce((sum, step) => sum + step, 0)).toPrecision(9))
  const rounding = quantumOf(times)
  const spacing = spacingAt(1 / s)
  return isLogProblem(spacing) || rounding * 2 > s ? spacing : { s, toleranceS: Math.max(spacing.toleranceS, rounding * 1.05) }
}

/** The spacing at a rate, or that no suspension is logged so. */
export function spacingAt(rateHz: number): Spacing | LogProblem {
  const [slowest, fastest] = plausibleHz
  if (rateHz >= slowest && rateHz <= fastest) return { s: 1 / rateHz, toleranceS: shareOfSpacing / rateHz }
  return { message: say`${Number(rateHz.toPrecision(3))} samples a second is no rate that suspension is logged at; look at the unit of the time, or the rate` }
}

/** Below the one no velocity means anything, above the other no logger goes. */
const plausibleHz = [1, 100_000] as const

/** The power of ten that all these times are multiples of, s: how finely their column is written. */
function quantumOf(times: readonly number[]): number {
  for (let decimals = 0; decimals <= 6; decimals++) {
    const scale = 10 ** decimals
    if (times.every((time) => Math.abs(time * scale - Math.round(time * scale)) < 1e-6 * Math.max(1, Math.abs(time)))) return 1 / scale
  }
  return 0
}
