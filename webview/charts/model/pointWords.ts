import type { ChartAxis, ChartView } from '../../../src/core/charts/view'
import type { PointSpot } from './walkPoints'

const figure = (value: number, { digits, unit }: ChartAxis): string => {
  const number = String(Number(value.toFixed(Math.min(20, Math.max(0, digits)))))
  return unit === '' ? number : unit === '°' ? `${number}°` : `${number} ${unit}`
}

/** A point in words: as it was handed over, else line, number and place. */
export function pointWords({ series, x, y }: ChartView, { series: place, at }: PointSpot): string {
  const own = series[place]!
  const said = own.said?.[at]
  if (said !== undefined) return said
  const u = own.u?.[at]
  const value = figure(own.y[at]!, y)
  return `${own.label}: ${u === undefined || u === null ? value : `${value} ± ${figure(u, y)}`}, ${x.label} ${x.names?.[own.x[at]!] ?? figure(own.x[at]!, x)}`
}
