import type { DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import type { ChartGroup, ChartView } from './view'

/** A chart: where it belongs, the computed rows it draws, and how it is made from a notebook. */
export interface Chart {
  key: string
  group: ChartGroup
  /** Keys of computed rows without their `computed/`, for the way from a cell to its chart. */
  rows: readonly string[]
  /** Where it is left out, unless this says so; a chart without it is always there. */
  wanted?(notebook: Notebook, entry: Entry | undefined, beside: readonly Entry[]): boolean
  /** `entry` is the one looked at, the last one where none is; absent while there is none at all. `beside` are others to hold against it. */
  build(notebook: Notebook, entry: Entry | undefined, units: DisplayUnits, beside?: readonly Entry[]): ChartView
}
