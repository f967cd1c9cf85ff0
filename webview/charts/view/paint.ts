import type uPlot from 'uplot'
import type { ChartSeries, ChartView } from '../../../src/core/charts/view'
import { clearestBox } from '../model/labels'
import type { Inks } from './inks'
import { isHollow, markPath } from './manners'

/** Marks of a line whose places have no names stand at least this far apart, CSS px. */
const markSpace = 56
const hatchSpace = 7

/** The windows, beneath everything else: every other one hatched, with their edges drawn. */
export function paintBands(plot: uPlot, { bands, series }: ChartView, inks: Inks): void {
  bands.forEach(({ from, to, label }, at) => {
    const { ctx } = plot
    const { left, width } = plot.bbox
    const [top, bottom] = [plot.valToPos(to, 'y', true), plot.valToPos(from, 'y', true)]
    inPlot(plot, () => {
      ctx.beginPath()
      ctx.rect(left, top, width, bottom - top)
      ctx.clip()
      ctx.globalAlpha = 0.1
      ctx.fillStyle = inks.window
      ctx.fillRect(left, top, width, bottom - top)
      ctx.globalAlpha = 0.28
      ctx.strokeStyle = inks.window
      if (at % 2 === 1) hatch(plot, { left, top, right: left + width, bottom })
      ctx.globalAlpha = 0.7
      ctx.lineWidth = 2 * ratio()
      for (const y of [top, bottom]) line(ctx, [[left, y], [left + width, y]])
      ctx.globalAlpha = 1
      paintName(plot, { label, top, bottom }, series, inks)
    })
  })
}

/** The name of a window in the corner of it that fewest lines run through, and beneath them. */
function paintName(plot: uPlot, { label, top, bottom }: { label: string; top: number; bottom: number }, series: readonly ChartSeries[], inks: Inks): void {
  const { ctx, bbox } = plot
  const [space, size] = [5 * ratio(), inks.fontSize * ratio()]
  ctx.font = scaled(inks.font)
  const [width, height] = [ctx.measureText(label).width + 2 * space, size + space]
  const [edgeTop, edgeBottom] = [Math.max(top, bbox.top) + ratio(), Math.max(Math.min(bottom, bbox.top + bbox.height) - height - ratio(), Math.max(top, bbox.top))]
  const boxes = [bbox.left + ratio(), bbox.left + bbox.width - width - ratio()].flatMap((left) => [edgeTop, edgeBottom].map((y) => ({ left, top: y, width, height })))
  const box = clearestBox(boxes, series.map((own) => onCanvas(plot, own)))!
  ctx.fillStyle = inks.ground
  ctx.globalAlpha = 0.8
  ctx.fillRect(box.left, box.top, box.width, box.height)
  ctx.globalAlpha = 1
  ctx.fillStyle = inks.text
  ctx.textAlign = 'left'
  ctx.textBaseline = 'middle'
  ctx.fillText(label, box.left + space, box.top + box.height / 2)
}

/** A font of CSS px as one of the canvas's. */
export const scaled = (font: string): string => font.replace(/^[\d.]+/, (size) => String(Number(size) * ratio()))

function onCanvas(plot: uPlot, { x, y }: ChartSeries): [number, number][] {
  return x.flatMap((place, at): [number, number][] => {
    const value = y[at]
    return value === null || value === undefined ? [] : [[plot.valToPos(place, 'x', true), plot.valToPos(value, 'y', true)]]
  })
}

function hatch(plot: uPlot, { left, top, right, bottom }: { left: number; top: number; right: number; bottom: number }): void {
  const { ctx } = plot
  const height = bottom - top
  ctx.lineWidth = ratio()
  for (let x = left - height; x < right; x += hatchSpace * ratio()) line(ctx, [[x, bottom], [x + height, top]])
}

/** Whiskers of one standard uncertainty, and the mark of each point or of some along a line. */
export function paintPoints(plot: uPlot, { series, x: axis }: ChartView, inks: Inks): void {
  inPlot(plot, () => {
    series.forEach((own, index) => {
      if (own.form === 'bars' || own.form === 'steps' || own.form === 'cells') return
      plot.ctx.strokeStyle = inks.series[index % inks.series.length]!
      plot.ctx.fillStyle = isHollow(index) ? inks.ground : plot.ctx.strokeStyle
      paintWhiskers(plot, own)
      paintMarks(plot, own, { index, everyPoint: axis.names !== undefined || own.form === 'marks' })
    })
  })
}

function paintWhiskers(plot: uPlot, { x, y, u }: ChartSeries): void {
  const { ctx } = plot
  const cap = 3.5 * ratio()
  ctx.lineWidth = 1.25 * ratio()
  u?.forEach((spread, at) => {
    const value = y[at]
    if (!spread || value === null || value === undefined) return
    const px = plot.valToPos(x[at]!, 'x', true)
    const [top, bottom] = [plot.valToPos(value + spread, 'y', true), plot.valToPos(value - spread, 'y', true)]
    line(ctx, [[px, top], [px, bottom]])
    for (const end of [top, bottom]) line(ctx, [[px - cap, end], [px + cap, end]])
  })
}

function paintMarks(plot: uPlot, { x, y }: ChartSeries, { index, everyPoint }: { index: number; everyPoint: boolean }): void {
  const { ctx } = plot
  const space = markSpace * ratio()
  // Lines that lie on each other keep their marks apart.
  let last = plot.bbox.left - space + (index * space) / 4
  ctx.lineWidth = 1.5 * ratio()
  y.forEach((value, at) => {
    if (value === null) return
    const px = plot.valToPos(x[at]!, 'x', true)
    if (!everyPoint && Math.abs(px - last) < space) return
    last = px
    const path = new Path2D(markPath(index, px, plot.valToPos(value, 'y', true), 3.5 * ratio()))
    ctx.fill(path)
    ctx.stroke(path)
  })
}

/** The path of points in their own order, for lines whose x does not rise. */
export function pathInOrder(plot: uPlot, series: ChartSeries): Path2D {
  const path = new Path2D()
  for (const [x, y] of onCanvas(plot, series)) path.lineTo(x, y)
  return path
}

/** The outline of bars as wide as x is apart, from zero to zero. */
export function pathOfSteps(plot: uPlot, { x, y }: ChartSeries): Path2D {
  const path = new Path2D()
  const half = x.length > 1 ? (x[1]! - x[0]!) / 2 : 0.5
  const to = (px: number, py: number) => path.lineTo(plot.valToPos(px, 'x', true), plot.valToPos(py, 'y', true))
  x.forEach((place, at) => {
    if (at === 0) to(place - half, 0)
    to(place - half, y[at] ?? 0)
    to(place + half, y[at] ?? 0)
  })
  if (x.length > 0) to(x.at(-1)! + half, 0)
  return path
}

/** Cells, fuller where they weigh more; none is so faint as not to be there. */
export function paintCells(plot: uPlot, { series }: ChartView, inks: Inks): void {
  series.forEach(({ form, x, y, weight, cell }, index) => {
    if (form !== 'cells' || !cell) return
    const { ctx } = plot
    inPlot(plot, () => {
      ctx.fillStyle = inks.series[index % inks.series.length]!
      x.forEach((place, at) => {
        const [left, right] = [plot.valToPos(place - cell[0] / 2, 'x', true), plot.valToPos(place + cell[0] / 2, 'x', true)]
        const [top, bottom] = [plot.valToPos(y[at]! + cell[1] / 2, 'y', true), plot.valToPos(y[at]! - cell[1] / 2, 'y', true)]
        ctx.globalAlpha = 0.08 + 0.62 * Math.sqrt(weight?.[at] ?? 1)
        const gap = Math.min(ratio(), 0.1 * Math.min(right - left, bottom - top))
        ctx.fillRect(left, top, right - left - gap, bottom - top - gap)
      })
      ctx.globalAlpha = 1
    })
  })
}

const ratio = (): number => window.devicePixelRatio

function line(ctx: CanvasRenderingContext2D, [[x, y], [toX, toY]]: [[number, number], [number, number]]): void {
  ctx.beginPath()
  ctx.moveTo(x, y)
  ctx.lineTo(toX, toY)
  ctx.stroke()
}

function inPlot({ ctx, bbox: { left, top, width, height } }: uPlot, paint: () => void): void {
  ctx.save()
  ctx.setLineDash([])
  ctx.beginPath()
  // A mark on the edge is still to be seen whole.
  const room = 5 * ratio()
  ctx.rect(left - room, top - room, width + 2 * room, height + 2 * room)
  ctx.clip()
  paint()
  ctx.restore()
}
