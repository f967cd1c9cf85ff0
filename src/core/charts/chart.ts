import type { DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import type { ChartGroup, ChartView } from './view'

/** A chart: where it belongs, the computed rows it draws, and how it is made from a notebook. */
export interface Chart {
  key: string
  group: ChartGroup
  /** Keys of computed rows without their `computed/`, for the way from a cell to its chart. */
  rows: readonly string[]
  /** `entry` is the one looked at, the last one where none is; absent while there is none at all. */
  build(notebook: Notebook, entry: Entry | undefined, units: DisplayUnits): ChartView
}
