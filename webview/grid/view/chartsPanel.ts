import type { ChartGroup, ChartsView } from '../../../src/core/charts/view'
import { createButton } from '../../controls'
import type { ChartFigure, FigurePorts } from '../../charts'
import type { Session } from '../model/session'
import { HEADER } from '../model/spot'
import { say } from '../strings'
import { make, setAttribute } from './dom'
import { loadCharts } from './loadCharts'
import { Splitter } from './splitter'

/** The charts below the grid: a tab for each kind, the figures of one, as drawings or as tables. */
export class ChartsPanel {
  readonly element = make('section', 'charts')
  readonly #splitter: Splitter
  readonly #tabs = make('div', 'charts-tabs', { role: 'tablist' })
  readonly #asTable = make('button', 'charts-toggle', { type: 'button' })
  readonly #close = createButton('×', 'quiet', () => this.#leave(true))
  readonly #body = make('div', 'charts-body', { role: 'tabpanel', id: 'charts-body' })
  readonly #failed = make('p', 'charts-failed', { role: 'status' })
  #figures: ChartFigure[] = []
  #make: ((ports: FigurePorts) => ChartFigure) | undefined
  #drawn: { given: ChartsView | undefined; asTable: boolean } = { given: undefined, asTable: false }
  #focus = false

  constructor(readonly session: Session, readonly leave: () => void) {
    const { charts } = session
    this.#splitter = new Splitter(() => charts.share, (share) => charts.resize(share))
    this.#asTable.addEventListener('click', () => charts.showTable(!charts.asTable))
    this.#tabs.addEventListener('keydown', (event) => this.#tabKey(event))
    this.element.addEventListener('keydown', (event) => event.key === 'Escape' && this.#escape(event))
    const head = make('div', 'charts-head', {}, this.#tabs, this.#asTable, this.#close.element)
    this.element.append(this.#splitter.element, head, this.#failed, this.#body)
    this.element.hidden = true
  }

  draw(focus = false): void {
    const { charts, model } = this.session
    this.element.hidden = !charts.open || model.view.state === 'empty'
    if (this.element.hidden) return this.#empty()
    this.#focus ||= focus
    this.element.style.height = `${Math.round(charts.share * 100)}vh`
    this.#drawHead()
    if (this.#make) return this.#drawFigures()
    void loadCharts().then(({ ChartFigure }) => {
      this.#make = (ports) => new ChartFigure(ports)
      this.#failed.hidden = true
      this.draw()
    }, () => {
      this.#failed.hidden = false
      this.#failed.textContent = say('charts.failed')
    })
  }

  #drawHead(): void {
    const { charts } = this.session
    for (const [element, name] of [[this.element, 'charts.title'], [this.#tabs, 'charts.groups'], [this.#close.element, 'charts.close']] as const) setAttribute(element, 'aria-label', say(name))
    setAttribute(this.#close.element, 'title', say('charts.close'))
    this.#splitter.draw(say('charts.height'))
    this.#asTable.textContent = say('charts.asTable')
    setAttribute(this.#asTable, 'aria-pressed', String(charts.asTable))
    this.#drawTabs(charts.given?.groups ?? [])
  }

  #drawTabs(groups: ChartsView['groups']): void {
    const { charts } = this.session
    if (this.#tabs.childElementCount !== groups.length) {
      this.#tabs.replaceChildren(...groups.map(({ key }) => {
        const tab = make('button', 'charts-tab', { type: 'button', role: 'tab', id: `charts-tab-${key}`, 'aria-controls': 'charts-body' })
        tab.addEventListener('click', () => charts.show(key))
        return tab
      }))
    }
    groups.forEach(({ key, label }, at) => {
      const tab = this.#tabs.children[at] as HTMLElement
      const isShown = key === charts.group
      if (tab.textContent !== label) tab.textContent = label
      setAttribute(tab, 'aria-selected', String(isShown))
      setAttribute(tab, 'tabindex', isShown ? '0' : '-1')
      if (isShown) setAttribute(this.#body, 'aria-labelledby', tab.id)
    })
  }

  #drawFigures(): void {
    const { given, asTable } = this.session.charts
    if (given && (given !== this.#drawn.given || asTable !== this.#drawn.asTable)) {
      this.#drawn = { given, asTable }
      for (const extra of this.#figures.splice(given.charts.length)) extra.destroy()
      given.charts.forEach((view, at) => {
        const figure = this.#figures[at] ?? this.#add()
        figure.show(view, asTable, { hint: say('charts.hint') })
      })
    }
    if (this.#focus && given) this.#take()
  }

  #add(): ChartFigure {
    const figure = this.#make!({ chosen: (entry, row) => this.#go(entry, row), lookedCloser: (within) => this.session.charts.lookCloser(within), left: () => this.leave() })
    this.#figures.push(figure)
    this.#body.append(figure.element)
    return figure
  }

  /** Puts the keyboard into the first chart that has points, on the current entry's where it has one; else onto the tab. */
  #take(): void {
    this.#focus = false
    const { column } = this.session.keyed(this.session.active)
    if (this.#figures.some((figure) => figure.focus(column))) return
    this.#tabs.querySelector<HTMLElement>('[aria-selected="true"]')?.focus()
  }

  /** Goes to the cell of a point, or to its entry where the row is not shown. */
  #go(entry: string | undefined, row: string | undefined): void {
    const { session } = this
    if (entry === undefined) return
    const spot = (row === undefined ? undefined : session.model.spotOf({ row, column: entry })) ?? session.model.spotOf({ column: entry })
    if (!spot) return
    session.select(spot.row === HEADER ? { row: session.active.row, column: spot.column } : spot)
    session.ports.changed({ kind: 'focus' })
  }

  #empty(): void {
    for (const figure of this.#figures.splice(0)) figure.destroy()
    this.#drawn = { given: undefined, asTable: false }
    this.#focus = false
  }

  #leave(close: boolean): void {
    if (close) this.session.charts.close()
    this.leave()
  }

  #escape(event: KeyboardEvent): void {
    event.preventDefault()
    event.stopPropagation()
    this.#leave(false)
  }

  #tabKey(event: KeyboardEvent): void {
    const groups = this.session.charts.given?.groups ?? []
    const by = { ArrowLeft: -1, ArrowRight: 1, Home: -groups.length, End: groups.length }[event.key]
    if (by === undefined || event.ctrlKey || event.metaKey || event.altKey || groups.length === 0) return
    event.preventDefault()
    event.stopPropagation()
    const at = groups.findIndex(({ key }) => key === this.session.charts.group)
    const to = Math.abs(by) === 1 ? (at + by + groups.length) % groups.length : by < 0 ? 0 : groups.length - 1
    this.session.charts.show(groups[to]!.key satisfies ChartGroup)
    ;(this.#tabs.children[to] as HTMLElement).focus()
  }
}
