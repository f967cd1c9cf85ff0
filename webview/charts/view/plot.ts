import './soundLanguage'
import uPlot from 'uplot'
import 'uplot/dist/uPlot.min.css'
import type { ChartSeries, ChartView } from '../../../src/core/charts/view'
import { namedPlaces } from '../model/labels'
import { rangeOfX, rangeOfY, shifted, zoomed, type Range } from '../model/ranges'
import { nearestTo, type PointSpot } from '../model/walkPoints'
import { InkPot, onThemeChange, type Inks } from './inks'
import { make } from './make'
import { dashOf } from './manners'
import { Overlay } from './overlay'
import { paintBands, paintCells, paintPoints, pathInOrder, pathOfSteps } from './paint'

/** How near the pointer must come to a point, CSS px. */
const reach = 28
const longestName = 16
/** About what the axis on the left takes, CSS px, before it is drawn. */
const leftAxis = 46

export interface PlotPorts {
  /** The pointer is at a point, or at none. */
  pointed(spot: PointSpot | undefined): void
  chosen(spot: PointSpot): void
  /** A stretch of x is in sight, or all of it. */
  looked(range: Range | undefined): void
}

/** The drawing of a chart, for those who see it. It fills its element, follows the theme, and knows nothing of keys. */
export class Plot {
  readonly element = make('div', 'chart-plot', { 'aria-hidden': 'true' })
  readonly #pot = new InkPot()
  readonly #size = new ResizeObserver(() => this.#redraw())
  readonly #stop: () => void
  #view: ChartView | undefined
  #drawn: { plot: uPlot; overlay: Overlay; width: number; height: number } | undefined
  /** The stretch of x in sight, where it is not all of it. */
  #zoom: Range | undefined
  #marked: { spot: PointSpot; held: boolean } | undefined

  constructor(readonly ports: PlotPorts) {
    this.element.append(this.#pot.element)
    this.#size.observe(this.element)
    this.#stop = onThemeChange(() => requestAnimationFrame(() => this.#draw()))
  }

  show(view: ChartView): void {
    if (this.#view?.key !== view.key || String(rangeOfX(this.#view)) !== String(rangeOfX(view))) this.#zoom = undefined
    this.#view = view
    this.#draw()
  }

  /** Marks a point; `held` where the keyboard stands on it. */
  mark(spot: PointSpot | undefined, held: boolean): void {
    this.#marked = spot && { spot, held }
    const x = spot && this.#view?.series[spot.series]?.x[spot.at]
    if (held && this.#zoom && x !== undefined) this.#look(shifted(this.#zoom, x, rangeOfX(this.#view!)))
    this.#placeMark()
  }

  /** `by` times as much of x around the marked point, or around the middle. */
  zoom(by: number): void {
    if (!this.#view) return
    const all = rangeOfX(this.#view)
    const now = this.#zoom ?? all
    const x = this.#marked && this.#view.series[this.#marked.spot.series]?.x[this.#marked.spot.at]
    this.#look(zoomed(now, by, x ?? (now[0] + now[1]) / 2, all))
  }

  showAll(): void {
    this.#look(undefined)
  }

  destroy(): void {
    this.#stop()
    this.#size.disconnect()
    this.#drawn?.plot.destroy()
  }

  #look(range: Range | undefined): void {
    const all = this.#view && rangeOfX(this.#view)
    this.#zoom = range && all && range[1] - range[0] < all[1] - all[0] ? range : undefined
    // What is in sight is told by the range function of x, whatever is set here.
    this.#drawn?.plot.setScale('x', { min: 0, max: 1 })
    this.ports.looked(this.#zoom)
  }

  /** A change of size alone needs no new plot. */
  #redraw(): void {
    const { clientWidth: width, clientHeight: height } = this.element
    if (width === this.#drawn?.width && height === this.#drawn.height) return
    this.#draw()
  }

  #draw(): void {
    this.#drawn?.plot.destroy()
    this.#drawn = undefined
    const view = this.#view
    const { clientWidth: width, clientHeight: height } = this.element
    if (!view || view.series.length === 0 || width < 60 || height < 60) return
    const gutter = Math.round(Math.max(84, Math.min(200, width * 0.24)))
    const overlay = new Overlay(view, gutter)
    const plot = new uPlot(this.#options({ view, overlay, width, height, gutter }), dataOf(view), this.element)
    this.#drawn = { plot, overlay, width, height }
    plot.over.append(overlay.element)
    this.#listen(plot)
  }

  #options({ view, overlay, width, height, gutter }: { view: ChartView; overlay: Overlay; width: number; height: number; gutter: number }): uPlot.Options {
    const inks = this.#pot.read()
    const rangeX = (): [number, number] => [...(this.#zoom ?? rangeOfX(view))]
    return {
      width, height, padding: [8, gutter, 0, 0], legend: { show: false }, scales: { x: { time: false, range: rangeX }, y: { range: () => [...rangeOfY(view)] } },
      axes: axesOf(view, inks, width - gutter - leftAxis), series: [{}, ...view.series.map((series, index) => lineOf(series, { index, inks }))],
      cursor: { x: false, y: false, points: { show: false }, drag: { x: true, y: false, setScale: false, dist: 6 }, bind: { dblclick: () => null } },
      hooks: {
        drawClear: [(plot) => {
          paintBands(plot, view, inks)
          paintCells(plot, view, inks)
        }], draw: [(plot) => {
          paintPoints(plot, view, inks)
          // The first drawing comes after the constructor, and only then is it known where everything is.
          overlay.place(plot)
          this.#placeMark()
        }],
        setSelect: [(plot) => this.#select(plot)],
      },
    }
  }

  /** A stretch drawn with the pointer is looked at. */
  #select(plot: uPlot): void {
    const { left, width } = plot.select
    if (width === 0) return
    plot.setSelect({ left: 0, top: 0, width: 0, height: 0 }, false)
    this.#look([plot.posToVal(left, 'x'), plot.posToVal(left + width, 'x')])
  }

  #listen(plot: uPlot): void {
    const at = ({ clientX, clientY }: MouseEvent): PointSpot | undefined => {
      const { left, top } = plot.over.getBoundingClientRect()
      return nearestTo(this.#view!.series, [clientX - left, clientY - top], reach, (x, y) => [plot.valToPos(x, 'x'), plot.valToPos(y, 'y')])
    }
    plot.over.addEventListener('mousemove', (event) => event.buttons === 0 && this.ports.pointed(at(event)))
    plot.over.addEventListener('mouseleave', () => this.ports.pointed(undefined))
    plot.over.addEventListener('click', (event) => {
      const spot = at(event)
      if (spot) this.ports.chosen(spot)
    })
    plot.over.addEventListener('dblclick', () => this.showAll())
  }

  #placeMark(): void {
    const { plot, overlay } = this.#drawn ?? {}
    if (!plot || !overlay) return
    const { spot, held } = this.#marked ?? {}
    const own = spot && this.#view!.series[spot.series]
    const [x, y] = [own?.x[spot!.at], own?.y[spot!.at]]
    const isThere = x !== undefined && y !== null && y !== undefined
    overlay.mark(isThere ? { left: plot.valToPos(x, 'x'), top: plot.valToPos(y, 'y') } : undefined, held)
  }
}

const rises = ({ x }: ChartSeries): boolean => x.every((value, at) => at === 0 || value > x[at - 1]!)

/** The library wants one column of x for all. A series whose x does not rise draws itself, and is there by its extent only. */
function dataOf({ series }: ChartView): uPlot.AlignedData {
  const tables = series.map((each): uPlot.AlignedData => (rises(each) ? [each.x, each.y] : [ends(each.x), ends(each.y)]))
  return uPlot.join(tables, tables.map((table) => table.map(() => 0)))
}

function ends(values: readonly (number | null)[]): number[] {
  const numbers = values.filter((value) => value !== null)
  return [numbers.reduce((a, b) => Math.min(a, b)), numbers.reduce((a, b) => Math.max(a, b))]
}

function lineOf(series: ChartSeries, { index, inks }: { index: number; inks: Inks }): uPlot.Series {
  const stroke = inks.series[index % inks.series.length]!
  const shared: uPlot.Series = { stroke, width: 2, dash: [...dashOf(index)], points: { show: false }, spanGaps: true }
  if (series.form === 'cells' || series.form === 'marks') return { ...shared, paths: () => null }
  if (series.form === 'bars') return { ...shared, width: 1.5, fill: withAlpha(stroke), paths: uPlot.paths.bars!({ size: [1, Infinity], align: 0 }) }
  return rises(series) && series.form === 'line' ? shared : { ...shared, paths: (plot) => ({ stroke: series.form === 'steps' ? pathOfSteps(plot, series) : pathInOrder(plot, series), fill: null, clip: null, band: null, gaps: null, flags: 1 } as unknown as uPlot.Series.Paths) }
}

const withAlpha = (ink: string): string => (ink.startsWith('rgb(') ? ink.replace('rgb(', 'rgba(').replace(')', ', 0.18)') : ink.replace(')', ' / 0.18)'))

function axesOf({ x, y }: ChartView, { text, line, font, fontSize }: Inks, room: number): uPlot.Axis[] {
  const shared: uPlot.Axis = { stroke: text, font, labelFont: font, grid: { stroke: line, width: 1 }, ticks: { stroke: line, width: 1, size: 4 }, gap: 4, labelGap: 0, labelSize: fontSize + 6 }
  const label = ({ label: words, unit }: ChartView['x']) => (unit === '' ? words : `${words}, ${unit}`)
  const numbers = (_: uPlot, splits: number[]) => splits.map((value) => String(Number(value.toPrecision(9))).replace('-', '−'))
  const widest = (plot: uPlot, names: readonly string[]) => {
    plot.ctx.font = plot.axes[0]!.font as unknown as string ?? font
    return Math.max(0, ...names.map((name) => plot.ctx.measureText(name).width / window.devicePixelRatio))
  }
  const short = (x.names ?? []).map((name) => (name.length > longestName ? `${name.slice(0, longestName - 1)}…` : name))
  const named: Partial<uPlot.Axis> = {
    splits: (plot, _, from, to) => namedPlaces(from, to, short.length, room, widest(plot, short) + 14),
    values: (_, splits) => splits.map((at) => short[at] ?? ''), grid: { show: false }, size: fontSize + 14,
  }
  return [
    x.names ? { ...shared, ...named } : { ...shared, label: label(x), values: numbers, size: fontSize + 14, space: 50 },
    { ...shared, label: label(y), values: numbers, space: 34, size: (plot, values) => (values ? widest(plot, values) : 0) + 12 },
  ]
}
