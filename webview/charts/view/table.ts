import type { ChartView } from '../../../src/core/charts/view'
import { make } from './make'

/** The numbers of a chart as a table with a caption: the chart for those who do not see it. */
export function makeTable({ title, table: { columns, rows } }: ChartView): HTMLTableElement {
  const head = make('thead', '', {}, make('tr', '', {}, ...columns.map((column) => make('th', '', { scope: 'col' }, column))))
  const body = make('tbody', '', {}, ...rows.map(([name = '', ...cells]) => make('tr', '', {}, make('th', '', { scope: 'row' }, name), ...cells.map((cell) => make('td', '', {}, cell)))))
  return make('table', 'chart-table', {}, make('caption', '', {}, title), head, body)
}
