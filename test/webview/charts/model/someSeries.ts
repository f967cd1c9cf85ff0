import type { ChartSeries } from '../../../../src/core/charts/view'

export const line = (key: string, points: readonly (readonly [x: number, y: number | null, entry?: string])[], form: ChartSeries['form'] = 'line'): ChartSeries => ({
  key, label: key, form, x: points.map(([x]) => x), y: points.map(([, y]) => y), ...(points[0]?.[2] === undefined ? {} : { entries: points.map(([, , entry]) => entry!) }),
})
