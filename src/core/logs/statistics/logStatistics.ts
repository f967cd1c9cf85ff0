import type { AttitudeStatistics } from './attitudes'
import type { BrakingStatistics } from './braking'
import type { DecayStatistics } from './freeDecays'
import type { FrontRearStatistics } from './frontRear'
import type { Histogram } from './histogram'
import type { PackingStatistics } from './packing'
import type { SpectrumStatistics } from './spectrum'
import type { SpeedStatistics } from './speeds'
import type { StopStatistics } from './stops'
import type { LogTrace } from './trace'

/** Positions of one end, mm at the wheel from full extension (at the front along the fork), and in % of its travel where that is known. */
export interface PositionStatistics {
  samples: number
  /** Exact where the readings lie on a decimal grid, else to the resolution. */
  exact: boolean
  resolutionMm: number
  percentileMethod: 'linear'
  percentilesMm: Record<string, number>
  percentilesPct?: Record<string, number>
  /** Dynamic sag, both ways of telling it. */
  medianMm: number
  meanMm: number
  medianPct?: number
  meanPct?: number
  deepestMm: number
  deepestPct?: number
  deepestAtS: number
  leastMm: number
  leastAtS: number
  histogramMm: Histogram
  histogramPct?: Histogram
}

export interface EndStatistics {
  column: string
  travelMm?: number
  position: PositionStatistics
  bottoming?: StopStatistics
  topping?: StopStatistics
  velocity?: SpeedStatistics
  freeDecays?: DecayStatistics
  packing?: PackingStatistics
  spectrum?: SpectrumStatistics
  /** Only where a drawing was asked for. */
  trace?: LogTrace
}

export interface LapStatistics {
  lap: number
  fromS: number
  forS: number
  ends: Partial<Record<'front' | 'rear', LapEnd>>
}

export interface LapEnd {
  medianMm: number
  meanMm: number
  deepestMm: number
  bottomed?: number
  sharesPct?: SpeedStatistics['sharesPct']
}

/** How the samples were taken and what was made of them, to stand beside every number. */
export interface Sampling {
  rows: number
  rateHz: number
  /** From the first sample used to the last. */
  fromS: number
  toS: number
  /** Samples drawn between rows that were not at their time. */
  interpolated: number
  gaps: number
  gapS: number
  velocityFit: { points: number; order: number; spanS: number }
  /** Attitude, braking, decays and spectrum are taken from averages of so many samples. */
  averagedBy: number
}

export interface LogStatistics {
  sampling: Sampling
  window?: { fromS?: number; toS?: number; lap?: number }
  front?: EndStatistics
  rear?: EndStatistics
  frontRear?: FrontRearStatistics
  attitude?: AttitudeStatistics
  braking?: BrakingStatistics
  laps?: LapStatistics[]
}
