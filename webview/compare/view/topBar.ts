import { createButton, createCheckbox } from '../../controls'
import { make, setAttribute } from '../../page/dom'
import { counted, summaryOf } from '../model/describe'
import type { Session } from '../model/session'
import { say } from '../strings'

/** Of what machine it is, what differs in a few words, and what can be done. */
export class TopBar {
  readonly element = make('header', 'top')
  readonly #title = make('h1', 'title')
  readonly #summary = make('p', 'summary')
  readonly #actions = make('div', 'actions', { role: 'group' })
  readonly #older = createButton(say('bar.older'), 'plain', () => void this.session.do({ kind: 'step', newer: false }))
  readonly #newer = createButton(say('bar.newer'), 'plain', () => void this.session.do({ kind: 'step', newer: true }))
  readonly #swap = createButton(say('bar.swap'), 'plain', () => void this.session.do({ kind: 'swap' }))
  readonly #turns = createButton(say('bar.turns'), 'plain', () => void this.session.do({ kind: 'turns' }))
  readonly #filter = createCheckbox(say('bar.filter'), (checked) => void this.session.filter(checked))

  constructor(readonly session: Session) {
    this.#actions.append(this.#older.element, this.#newer.element, this.#swap.element, this.#turns.element, this.#filter.element)
    this.element.append(make('div', 'heading', {}, this.#title, this.#summary), this.#actions)
  }

  draw(): void {
    const { view, onlyDifferences, hidden } = this.session
    if (!view) return
    const { left, right } = view.comparison
    this.#title.textContent = left.title === right.title ? right.title : `${left.title} – ${right.title}`
    this.#summary.textContent = [summaryOf(view), ...(hidden > 0 ? [counted('sum.hidden', hidden)] : [])].join(' · ')
    setAttribute(this.#actions, 'aria-label', say('bar.actions'))
    this.#draw(this.#older, say('bar.older'), view.older === undefined ? undefined : say('bar.older.title', view.older), say('bar.older.none'))
    this.#draw(this.#newer, say('bar.newer'), view.newer === undefined ? undefined : say('bar.newer.title', view.newer), say('bar.newer.none'))
    this.#draw(this.#swap, say('bar.swap'), say('bar.swap.title'), '')
    this.#draw(this.#turns, say('bar.turns'), say('bar.turns.title'), '')
    this.#turns.element.hidden = !view.turnList
    this.#filter.checked = onlyDifferences
    setAttribute(this.#filter.element, 'title', say('bar.filter.title'))
  }

  #draw(button: ReturnType<typeof createButton>, label: string, title: string | undefined, otherwise: string): void {
    button.label = label
    button.enabled = title !== undefined
    setAttribute(button.element, 'title', title ?? otherwise)
  }
}
