/**
 * A chart as plain data that crosses to the webview: what to draw, each point in words, and the table that says the
 * same. Numbers are in the units of their axes already; whoever draws them converts and decides nothing.
 */
export interface ChartView {
  key: string
  title: string
  /** It is better drawn wide than high. */
  wide?: true
  /** What is drawn and how it is to be read. */
  about: string
  x: ChartAxis
  y: ChartAxis
  series: ChartSeries[]
  bands: ChartBand[]
  table: ChartTable
  /** Where a stretch of x can be had in more detail than is drawn. */
  detail?: ChartDetail
  /** What is missing from the picture, or was taken for granted in it. */
  notes: string[]
  /** Why there is nothing to draw, and what to measure or write down to have it. Absent where there is something. */
  wanting?: string[]
}

/** How finely a chart is drawn along x: so far apart are its points, and so far where all of them are known. */
export interface ChartDetail {
  step: number
  finest: number
  /** A stretch that is drawn in more detail. */
  closer?: { from: number; to: number; step: number }
}

export interface ChartAxis {
  label: string
  /** Empty where there is none. */
  unit: string
  /** Digits behind the point that say something. */
  digits: number
  /** At least so much is shown, so that a hair’s breadth does not look like a cliff. */
  span?: number
  /** Where the places along the axis have names rather than numbers: that of 0, of 1 and so on. */
  names?: string[]
}

/**
 * One run of points, in columns: there may be very many of them. `line` joins them in their order, whether x rises or
 * not; `bars` stand on zero, as wide as x is apart, and `steps` are their outline alone; `marks` are not joined; `cells`
 * are filled by their weight.
 */
export interface ChartSeries {
  key: string
  label: string
  form: 'line' | 'bars' | 'steps' | 'marks' | 'cells'
  x: number[]
  /** `null` where there is none; a line goes on over it. */
  y: (number | null)[]
  /** Standard uncertainty of y. */
  u?: (number | null)[]
  /** Each point in words. Without it the number and its unit have to do. */
  said?: string[]
  /** The entry each point belongs to, by its key, and the row of the grid they all stand in. */
  entries?: string[]
  row?: string
  /** The entry that all of them belong to. */
  entry?: string
  /** How wide and high cells are, and how full each is, from 0 to 1. */
  cell?: [width: number, height: number]
  weight?: number[]
}

/** A stretch of y that something should lie in. */
export interface ChartBand {
  key: string
  label: string
  from: number
  to: number
}

export interface ChartTable {
  /** The first heads the names of the rows. */
  columns: string[]
  rows: string[][]
}

export type ChartGroup = 'sag' | 'force' | 'geometry' | 'log'

/** The charts of one group, and what other groups there are. */
export interface ChartsView {
  group: ChartGroup
  groups: { key: ChartGroup; label: string }[]
  charts: ChartView[]
  /** The entry they are of, where they change with the one that is looked at. */
  ofEntry?: string
}
