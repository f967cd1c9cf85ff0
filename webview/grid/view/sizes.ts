import type { Column, Row } from '../../../src/core/grid/view'
import { usualWidth } from '../model/widths'

/** The measures of the grid in CSS px. grid.css draws within them; text lines are 18 px high. */
export const groupHeight = 30
/** The lines of the history over the entries' names, where it branches. */
export const laneTop = 3
export const laneHeight = 10

/** An entry's name and its facts; over them the history's lanes, and below them what it comes from, where it branches. */
export const headerHeight = (lanes: number) => 46 + (lanes === 0 ? 0 : laneTop + lanes * laneHeight + 16)

const lineHeight = 18
const rowPadding = 8

/** As high as its cells' text, or its label's where that stands on more lines. */
export const rowHeight = (row: Row, labelLines: number) => (row.kind === 'group' ? groupHeight : Math.max(row.lines, labelLines) * lineHeight + rowPadding)

/** As a person has drawn it, else the usual one. */
export const widthOf = ({ key }: Column, widths: ReadonlyMap<string, number>) => widths.get(key) ?? usualWidth
