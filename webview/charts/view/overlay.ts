import type uPlot from 'uplot'
import type { ChartSeries, ChartView } from '../../../src/core/charts/view'
import { spreadLabels } from '../model/labels'
import type { PointSpot } from '../model/walkPoints'
import { make, makeSvg } from './make'
import { dashOf, inkCount, isHollow, markPath } from './manners'

/** What stands over the drawing as elements: the name at the end of each line, and the current point. */
export class Overlay {
  readonly element = make('div', 'chart-overlay')
  readonly #here = make('div', 'chart-here')
  readonly #ring = make('div', 'chart-ring')
  readonly #labels: { element: HTMLElement; series: number }[]

  constructor(readonly view: ChartView, gutter: number) {
    this.#labels = view.series.map(({ label, form }, series) => ({ series, element: make('div', 'chart-label', { title: label }, sample(series, form), make('span', '', {}, label)) }))
    const names = make('div', 'chart-labels', {}, ...this.#labels.map(({ element }) => element))
    names.style.width = `${gutter - 6}px`
    this.element.append(this.#here, this.#ring, names)
    this.mark(undefined)
  }

  place(plot: uPlot): void {
    const { clientHeight: height } = plot.over
    const wanted = this.#labels.map(({ element, series }) => ({ middle: this.#endOf(plot, series), height: element.offsetHeight }))
    spreadLabels(wanted, height).forEach((top, at) => { this.#labels[at]!.element.style.top = `${top}px` })
  }

  /** Shows where one stands. */
  mark(at: { left: number; top: number } | undefined, held = false): void {
    this.#here.hidden = !at
    this.#ring.hidden = !at
    this.#ring.classList.toggle('is-held', held)
    if (!at) return
    this.#here.style.left = `${at.left}px`
    this.#ring.style.left = `${at.left}px`
    this.#ring.style.top = `${at.top}px`
  }

  /** How high the line ends that is in sight; the top for bars, which end nowhere. */
  #endOf(plot: uPlot, index: number): number {
    const { x, y, form } = this.view.series[index]!
    if (form === 'bars' || form === 'cells' || form === 'marks') return 0
    const { min, max } = plot.scales.x!
    let last: PointSpot | undefined
    for (let at = x.length - 1; at >= 0 && !last; at--) if (y[at] !== null && x[at]! <= max! && x[at]! >= min!) last = { series: index, at }
    return plot.valToPos(y[last?.at ?? x.length - 1] ?? 0, 'y')
  }
}

const samplePaths = { line: 'M1 6h24', bars: 'M2 11V2h22v9', steps: 'M1 10h6V5h6V2h6v6h6', marks: '', cells: 'M6 1h12v10H6z' } as const
const marked: ReadonlySet<ChartSeries['form']> = new Set<ChartSeries['form']>(['line', 'marks'])

/** A short piece of the line with its mark, or of the outline; of what is only marked, the mark. */
function sample(series: number, form: ChartSeries['form']): SVGElement {
  const mark = makeSvg('path', { d: markPath(series, 13, 6, 3.5), class: isHollow(series) ? 'is-hollow' : 'is-full' })
  return makeSvg('svg', { class: `chart-sample chart-ink-series-${series % inkCount}`, width: 26, height: 12, viewBox: '0 0 26 12', 'aria-hidden': 'true' },
    makeSvg('path', { d: samplePaths[form], 'stroke-dasharray': dashOf(series).join(' '), ...(form === 'cells' ? { fill: 'currentColor', 'fill-opacity': 0.4 } : {}) }), ...(marked.has(form) ? [mark] : []))
}
