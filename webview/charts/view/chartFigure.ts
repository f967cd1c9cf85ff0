import type { ChartView } from '../../../src/core/charts/view'
import { readChartKey, type ChartKey } from '../model/chartKeys'
import { closerWanted } from '../model/closer'
import { pointWords } from '../model/pointWords'
import { rangeOfX, type Range } from '../model/ranges'
import { firstPoint, keepPoint, stepAcross, stepAlong, toEnd, type PointSpot } from '../model/walkPoints'
import { make } from './make'
import { Plot } from './plot'
import { makeTable } from './table'

export interface FigurePorts {
  /** A point was chosen: the entry it belongs to, and its row, where it has them. */
  chosen(entry: string | undefined, row: string | undefined): void
  /** A stretch of x is in sight that can be had in more detail. */
  lookedCloser(within: Range): void
  /** Escape: the keyboard goes back to where it came from. */
  left(): void
}

/** What the page says around a chart, in its own language. */
export interface FigureWords {
  /** How to walk it, for the ear. */
  hint: string
}

let made = 0

/**
 * A chart with its title, its points walked by arrow keys, and its table. To a screen reader the points are a list box
 * of which only the current one is an element: there may be thousands. The drawing itself is for the eye alone.
 */
export class ChartFigure {
  readonly element = make('figure', 'chart')
  readonly #id = `chart-${++made}`
  readonly #title = make('h2', 'chart-title', { id: `${this.#id}-title` })
  readonly #readout = make('p', 'chart-readout', { 'aria-hidden': 'true' })
  readonly #hint = make('p', 'chart-unseen', { id: `${this.#id}-hint` })
  readonly #option = make('div', 'chart-unseen', { role: 'option', id: `${this.#id}-point`, 'aria-selected': 'true' })
  readonly #walk = make('div', 'chart-walk', { role: 'listbox', tabindex: '0', 'aria-orientation': 'horizontal', 'aria-labelledby': this.#title.id, 'aria-describedby': this.#hint.id, 'aria-activedescendant': this.#option.id })
  readonly #wanting = make('div', 'chart-wanting')
  readonly #numbers = make('div', 'chart-numbers')
  readonly #notes = make('ul', 'chart-notes')
  readonly #plot = new Plot({ pointed: (spot) => this.#point(spot), chosen: (spot) => this.#choose(spot), looked: (range) => this.#look(range) })
  #view: ChartView | undefined
  #spot: PointSpot | undefined
  #pointed: PointSpot | undefined
  #table = ''
  #asTable = false

  constructor(readonly ports: FigurePorts) {
    this.#walk.append(this.#plot.element, this.#option)
    this.element.append(make('figcaption', 'chart-head', {}, this.#title, this.#readout), this.#hint, this.#walk, this.#wanting, this.#numbers, this.#notes)
    this.#walk.addEventListener('keydown', (event) => this.#key(event))
    this.#walk.addEventListener('focus', () => this.#tell())
    this.#walk.addEventListener('blur', () => this.#tell())
  }

  /** The key of the chart it shows. */
  get key(): string | undefined {
    return this.#view?.key
  }

  /** Draws the chart, or a newer state of it. With `asTable` its numbers are shown in place of the drawing. */
  show(view: ChartView, asTable: boolean, words: FigureWords): void {
    const before = this.#view
    this.#view = view
    this.#asTable = asTable
    const spot = before?.key === view.key ? keepPoint(before.series, this.#spot, view.series) : undefined
    this.#spot = spot ?? firstPoint(view.series)
    this.#pointed = undefined
    this.element.classList.toggle('is-wide', view.wide === true)
    this.#title.textContent = view.title
    this.#hint.textContent = words.hint
    const isEmpty = view.series.length === 0
    this.#walk.hidden = isEmpty || asTable
    this.#wanting.hidden = !isEmpty
    this.#numbers.hidden = isEmpty
    this.#wanting.replaceChildren(...(view.wanting ?? []).map((line) => make('p', '', {}, line)))
    this.#notes.replaceChildren(...view.notes.map((note) => make('li', '', {}, note)))
    this.#notes.hidden = view.notes.length === 0 || isEmpty
    this.#drawTable(view)
    if (!this.#walk.hidden) this.#plot.show(view)
    this.#tell()
  }

  /** Puts the keyboard into the chart, onto the newest point of an entry if that has one. False where there is nothing to walk. */
  focus(entry?: string): boolean {
    const view = this.#view
    if (!view || view.series.length === 0) return false
    if (this.#asTable) this.#numbers.focus()
    else {
      this.#spot = firstPoint(view.series, entry)
      this.#walk.focus()
      this.#tell()
    }
    return true
  }

  destroy(): void {
    this.#plot.destroy()
    this.element.remove()
  }

  #drawTable(view: ChartView): void {
    this.#numbers.classList.toggle('chart-unseen', !this.#asTable)
    // Where it scrolls it must be reachable; unseen it needs no stop of its own.
    if (this.#asTable) for (const [name, value] of [['tabindex', '0'], ['role', 'region'], ['aria-labelledby', this.#title.id]] as const) this.#numbers.setAttribute(name, value)
    else for (const name of ['tabindex', 'role', 'aria-labelledby']) this.#numbers.removeAttribute(name)
    const table = JSON.stringify([view.title, view.table])
    if (table === this.#table) return
    this.#table = table
    this.#numbers.replaceChildren(makeTable(view))
  }

  #key(event: KeyboardEvent): void {
    const key = readChartKey(event)
    if (!key || !this.#spot) return
    event.preventDefault()
    event.stopPropagation()
    this.#do(key, this.#spot)
  }

  #do(key: ChartKey, spot: PointSpot): void {
    const { series } = this.#view!
    switch (key.kind) {
      case 'step': return this.#stand(stepAlong(series, spot, key.by))
      case 'leap': return this.#stand(stepAlong(series, spot, Math.max(1, Math.round(series[spot.series]!.x.length / 10)) * (key.forward ? 1 : -1)))
      case 'end': return this.#stand(toEnd(series, spot, key.last))
      case 'across': return this.#stand(stepAcross(series, spot, key.up))
      case 'zoom': return this.#plot.zoom(key.by)
      case 'showAll': return this.#plot.showAll()
      case 'choose': return this.#choose(spot)
      case 'leave': return this.ports.left()
    }
  }

  #stand(spot: PointSpot): void {
    this.#spot = spot
    this.#pointed = undefined
    this.#tell()
  }

  #point(spot: PointSpot | undefined): void {
    this.#pointed = spot
    this.#tell()
  }

  #look(sight: Range | undefined): void {
    const within = closerWanted(this.#view!.detail, sight, rangeOfX(this.#view!))
    if (within) this.ports.lookedCloser(within)
  }

  #choose({ series, at }: PointSpot): void {
    const own = this.#view!.series[series]!
    this.ports.chosen(own.entries?.[at] ?? own.entry, own.row)
  }

  /** Says the point one stands on; the eye is told of the one pointed at while there is one. */
  #tell(): void {
    const view = this.#view
    if (!view) return
    const isHeld = document.activeElement === this.#walk
    const shown = this.#pointed ?? (isHeld ? this.#spot : undefined)
    this.#readout.hidden = view.series.length === 0
    this.#readout.textContent = shown ? pointWords(view, shown) : view.series.length > 0 ? view.about : ''
    this.#plot.mark(shown, isHeld && !this.#pointed)
    if (!this.#spot) return
    const { length } = view.series[this.#spot.series]!.x
    this.#option.textContent = pointWords(view, this.#spot)
    this.#option.setAttribute('aria-posinset', String(this.#spot.at + 1))
    this.#option.setAttribute('aria-setsize', String(length))
  }
}
