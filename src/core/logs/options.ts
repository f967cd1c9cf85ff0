import type { BrakingLimits } from './statistics/braking'
import type { SpeedLimits } from './statistics/speeds'
import type { StopLimits } from './statistics/stops'

/**
 * Everything about the statistics that could be otherwise. The usual values are our own choice where no source stands
 * beside them; all of them are told with the numbers.
 */
export interface LogOptions {
  percentiles: readonly number[]
  /** Widths of the bins of the position's histograms. */
  positionBinMm: number
  positionBinPct: number
  /** The velocity's fit takes the odd number of points nearest this time, and never fewer than `fewestPoints`. */
  fitS: number
  fewestPoints: number
  fitOrder: number
  speedBinMmPerS: number
  speedToMmPerS: number
  speedLimits: SpeedLimits
  bottoming: StopLimits
  topping: StopLimits
  /** With a brake's column that holds a pressure: from so much on, unless the mapping names a value. */
  brakeOnBar: number
  brakeAtLeastS: number
  /** Without one: the front further in than the rear by so much, in % of their travels. */
  braking: BrakingLimits
  /** A swing of less is no turning point. */
  swingMm: number
  /** Into so many pieces the log is cut for a drawing of the whole, an even number; 0 for no drawing. */
  tracePieces: number
}

export const usualOptions: LogOptions = {
  percentiles: [1, 5, 10, 25, 50, 75, 90, 95, 99],
  positionBinMm: 5, positionBinPct: 5,
  fitS: 0.015, fewestPoints: 5, fitOrder: 2,
  // Near the 6 in/s that one trade article draws for motorcycles (kinghamtech.com, piston speed histogram); race cars use 25 mm/s.
  speedLimits: { compressionMmPerS: 150, reboundMmPerS: 150 },
  speedBinMmPerS: 50, speedToMmPerS: 1500,
  bottoming: { withinMm: 2, leaveMm: 5 }, topping: { withinMm: 1, leaveMm: 5 },
  brakeOnBar: 2, brakeAtLeastS: 0.3,
  braking: { on: 30, off: 20, atLeastS: 0.5 },
  swingMm: 2,
  tracePieces: 0,
}
