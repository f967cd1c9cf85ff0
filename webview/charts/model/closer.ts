import type { ChartDetail } from '../../../src/core/charts/view'
import type { Range } from './ranges'

/** Fewer points than these over the width of a chart look coarse. */
const fewest = 600

/**
 * The stretch to be asked for in more detail when this one is in sight: as much again on either side, to be walked into.
 * `undefined` where it is drawn finely enough, or there is no more to know.
 */
export function closerWanted(detail: ChartDetail | undefined, sight: Range | undefined, [low, high]: Range): Range | undefined {
  if (!detail || !sight) return undefined
  const [from, to] = sight
  const { step, finest, closer } = detail
  const drawn = closer && closer.from <= Math.max(from, low) + closer.step && closer.to >= Math.min(to, high) - closer.step ? closer.step : step
  if ((to - from) / drawn >= fewest || drawn < finest * 1.01) return undefined
  return [Math.max(low, from - (to - from)), Math.min(high, to + (to - from))]
}
