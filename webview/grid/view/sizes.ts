import type { Column, Row } from '../../../src/core/grid/view'

/** The measures of the grid in CSS px. grid.css draws within them; text lines are 18 px high. */
export const headerHeight = 46
export const columnWidth = 136
export const groupHeight = 30

const lineHeight = 18
const rowPadding = 8

export const rowHeight = (row: Row) => (row.kind === 'group' ? groupHeight : row.lines * lineHeight + rowPadding)

export const widthOf = (_: Column) => columnWidth

/** The labels give way on a narrow page, so that entries keep two thirds of it. */
export const labelWidth = (pageWidth: number) => Math.round(Math.max(200, Math.min(252, pageWidth * 0.28)))
