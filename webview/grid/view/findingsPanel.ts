import { createButton } from '../../controls'
import type { Severity } from '../../../src/core/finding'
import type { GridFinding } from '../../../src/core/grid/view'
import { say } from '../strings'
import { Axis, scrollToShow } from '../model/axis'
import { spotName } from '../model/describe'
import { listedFindings, severities, spotOfFinding } from '../model/findingsOrder'
import { uncover } from '../model/hide'
import type { Session } from '../model/session'
import { make, setAttribute } from './dom'
import { severityMark } from './findingLine'

const lineHeight = 26
const spareLines = 4

/** The list of findings below the grid, worst first. Only the lines in sight are elements. */
export class FindingsPanel {
  readonly element = make('section', 'findings')
  readonly #title = make('h2', 'findings-title')
  readonly #list = make('div', 'findings-list', { role: 'listbox', tabindex: '0' })
  readonly #height = make('div', 'findings-height', { role: 'presentation' })
  readonly #none = make('p', 'findings-none')
  readonly #close = createButton('×', 'quiet', () => this.session.show('findings', false))
  #findings: GridFinding[] = []
  #axis = new Axis([])
  #at = 0

  constructor(readonly session: Session, readonly leave: () => void) {
    this.#list.append(this.#height)
    this.element.append(make('div', 'findings-head', {}, this.#title, this.#close.element), this.#none, this.#list)
    this.#list.addEventListener('scroll', () => this.#lines())
    this.#list.addEventListener('keydown', (event) => this.#key(event))
    this.#list.addEventListener('click', (event) => {
      const line = (event.target as HTMLElement).closest<HTMLElement>('[data-at]')
      if (line) this.#go(Number(line.dataset.at))
    })
    new ResizeObserver(() => this.#lines()).observe(this.#list)
  }

  draw(): void {
    const { session } = this
    this.element.hidden = !session.findingsOpen || session.model.view.state === 'empty'
    if (this.element.hidden) return
    this.#findings = listedFindings(session.model)
    this.#axis = new Axis(this.#findings.map(() => lineHeight))
    this.#at = Math.max(0, Math.min(this.#at, this.#findings.length - 1))
    this.#title.textContent = say('findings.title')
    setAttribute(this.element, 'aria-label', say('findings.title'))
    setAttribute(this.#list, 'aria-label', say('findings.title'))
    setAttribute(this.#close.element, 'aria-label', say('findings.close'))
    setAttribute(this.#close.element, 'title', say('findings.close'))
    this.#none.textContent = say(session.model.view.unfinished ? 'findings.working' : 'findings.none')
    this.#none.hidden = this.#findings.length > 0
    this.#list.hidden = this.#findings.length === 0
    this.#height.style.height = `${this.#axis.total}px`
    this.#lines()
  }

  focus(): void {
    this.#list.focus()
  }

  #lines(): void {
    const { scrollTop, clientHeight } = this.#list
    const reach = this.#axis.reach(clientHeight, spareLines)
    const first = this.#axis.firstOf(scrollTop, reach, spareLines)
    const lines = this.#findings.slice(first, first + reach).map((finding, index) => this.#line(finding, first + index))
    this.#height.replaceChildren(...lines)
    const isDrawn = this.#at >= first && this.#at < first + reach
    setAttribute(this.#list, 'aria-activedescendant', isDrawn ? `finding-${this.#at}` : undefined)
  }

  #line(finding: GridFinding, at: number): HTMLElement {
    const { model } = this.session
    const spot = spotOfFinding(model, finding)
    const where = spot ? spotName(model, spot) : finding.line === undefined ? (finding.column ?? '') : say('findings.line', finding.line)
    const line = make('div', 'finding-line', {
      role: 'option', id: `finding-${at}`, 'data-at': String(at), title: finding.message,
      'aria-selected': String(at === this.#at), 'aria-setsize': String(this.#findings.length), 'aria-posinset': String(at + 1),
    }, severityMark(finding.severity), make('span', 'finding-message', {}, finding.message), make('span', 'finding-where', {}, where))
    line.style.top = `${this.#axis.offset(at)}px`
    return line
  }

  #key(event: KeyboardEvent): void {
    const page = Math.max(1, Math.floor(this.#list.clientHeight / lineHeight) - 1)
    const by = { ArrowDown: 1, ArrowUp: -1, PageDown: page, PageUp: -page, Home: -Infinity, End: Infinity }[event.key]
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (by !== undefined) this.#light(this.#at + by)
    else if (event.key === 'Enter' || event.key === ' ') this.#go(this.#at)
    else if (event.key === 'Escape') this.leave()
    else return
    event.preventDefault()
    event.stopPropagation()
  }

  #light(at: number): void {
    this.#at = Math.max(0, Math.min(at, this.#findings.length - 1))
    this.#list.scrollTop = scrollToShow(this.#axis, this.#at, this.#list.scrollTop, this.#list.clientHeight)
    this.#lines()
  }

  /** Goes to the cell; a finding that has none is shown in the text. */
  #go(at: number): void {
    const finding = this.#findings[at]
    if (!finding) return
    this.#light(at)
    const { row, column } = finding
    const spot = row === undefined && column === undefined ? undefined : uncover(this.session, { row, column })
    if (!spot) return this.session.ports.send({ type: 'openText', ...(finding.line === undefined ? { place: { column: finding.column ?? '', row: finding.row ?? '' } } : { line: finding.line }) })
    this.session.select(spot)
    this.session.ports.changed({ kind: 'focus' })
  }
}

/** `2 errors, 1 warning` in words, for a button's name. */
export function countsInWords(counts: Readonly<Record<Severity, number>>): string {
  const parts = severities.filter((severity) => counts[severity] > 0)
    .map((severity) => `${counts[severity]} ${say(counts[severity] === 1 ? `severity.${severity}` : `severity.${severity}.many`)}`)
  return parts.join(', ') || say('bar.findings.none')
}
