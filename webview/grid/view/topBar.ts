import { createButton } from '../../controls'
import { say } from '../strings'
import { severities } from '../model/findingsOrder'
import type { Session } from '../model/session'
import { openForm } from '../model/write'
import { make, setAttribute } from './dom'
import { severityMark } from './findingLine'
import { countsInWords } from './findingsPanel'

/** The machine's name and what can be done with the notebook. */
export class TopBar {
  readonly element = make('header', 'top')
  readonly #title = make('h1', 'title')
  readonly #actions = make('div', 'actions', { role: 'group' })
  readonly #counts = make('button', 'counts', { type: 'button' })
  readonly #charts = make('button', 'counts', { type: 'button' })
  readonly add = createButton(say('bar.addEntry'), 'plain', () => openForm(this.session, 'entry'))
  readonly #remark = createButton(say('bar.remark'), 'plain', () => openForm(this.session, 'remark'))
  readonly #about = createButton(say('bar.about'), 'plain', () => this.session.ports.changed({ kind: 'card' }))
  readonly #next = createButton(say('bar.whatNext'), 'plain', () => this.session.ports.changed({ kind: 'advice' }))
  readonly #text = createButton(say('bar.editAsText'), 'plain', () => this.#openText())

  constructor(readonly session: Session) {
    this.#counts.addEventListener('click', () => session.show('findings', !session.findingsOpen))
    this.#charts.addEventListener('click', () => (session.charts.open ? session.charts.close() : session.charts.show()))
    this.#actions.append(this.add.element, this.#remark.element, this.#about.element, this.#next.element, this.#text.element, this.#charts, this.#counts)
    this.element.append(this.#title, this.#actions)
  }

  draw(): void {
    const { model, onCell, findingsOpen } = this.session
    const { view } = model
    this.#title.textContent = view.title || say('bar.untitled')
    setAttribute(this.#actions, 'aria-label', say('bar.actions'))
    this.add.label = say('bar.addEntry')
    this.#remark.label = say('bar.remark')
    this.#about.label = say('bar.about')
    this.#next.label = say('bar.whatNext')
    this.#text.label = say('bar.editAsText')
    this.add.enabled = model.writable
    this.#remark.enabled = model.writable && onCell
    this.#about.enabled = onCell
    this.#next.enabled = model.all.columns.length > 0
    if (this.#charts.textContent !== say('bar.charts')) this.#charts.textContent = say('bar.charts')
    setAttribute(this.#charts, 'aria-expanded', String(this.session.charts.open))
    this.#drawCounts(findingsOpen)
  }

  focus(): void {
    this.add.element.focus()
  }

  #drawCounts(open: boolean): void {
    const { findings: { counts }, unfinished } = this.session.model.view
    const words = unfinished ? say('findings.working') : countsInWords(counts)
    setAttribute(this.#counts, 'aria-expanded', String(open))
    setAttribute(this.#counts, 'title', words)
    const marks = severities.filter((severity) => counts[severity] > 0)
      .flatMap((severity) => [severityMark(severity), make('span', 'count', {}, String(counts[severity]))])
    this.#counts.replaceChildren(make('span', '', {}, say('bar.findings')), ...(marks.length > 0 ? marks : [make('span', 'count', {}, unfinished ? '…' : '0')]))
  }

  #openText(): void {
    const { activePlace, ports } = this.session
    ports.send(activePlace ? { type: 'openText', place: activePlace } : { type: 'openText' })
  }
}
