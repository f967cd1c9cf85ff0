import { createButton } from '../../controls'
import { say } from '../strings'
import { printDay } from '../model/nextEntry'
import type { Session } from '../model/session'
import { openForm } from '../model/write'
import { make } from './dom'

/** What stands in the grid's place while there is nothing to show: ways to begin, or to add the first entry. */
export class BeginScreen {
  readonly element = make('main', 'begin')

  constructor(readonly session: Session) {}

  draw(): void {
    const { view } = this.session.model
    this.element.hidden = view.state !== 'empty'
    // A button that is only hidden keeps the keyboard for a moment, and the grid would not take it.
    if (this.element.hidden) return this.element.replaceChildren()
    const choices = (view.beginnings ?? []).map(({ key, label, about }) => {
      const choice = make('button', 'beginning', { type: 'button' }, make('strong', '', {}, label), make('span', '', {}, about))
      choice.addEventListener('click', () => void this.#begin(key))
      return make('li', '', {}, choice)
    })
    const asText = createButton(say('bar.editAsText'), 'plain', () => this.session.ports.send({ type: 'openText' }))
    this.element.replaceChildren(
      make('h1', '', {}, say('begin.title')),
      make('p', 'begin-about', {}, say('begin.about')),
      ...(choices.length > 0 ? [make('h2', '', {}, say('begin.choose')), make('ul', 'beginnings', {}, ...choices)] : [make('p', '', {}, say('begin.none'))]),
      asText.element,
    )
  }

  async #begin(start: string): Promise<void> {
    const { refused } = await this.session.ask({ kind: 'begin', start, date: printDay(new Date()) })
    this.session.note(refused === undefined ? undefined : say('refused.title', refused))
  }
}

/** Beside the labels of a notebook that has adjusters and no entry yet. */
export class FirstEntry {
  readonly element = make('div', 'first-entry')

  constructor(readonly session: Session) {}

  draw(): void {
    const { view, all, writable } = this.session.model
    // Of a text that was not understood nobody knows whether it has entries.
    this.element.hidden = view.state === 'empty' || view.state === 'broken' || all.columns.length > 0
    if (this.element.hidden) return
    const add = createButton(say('grid.addFirst'), 'primary', () => openForm(this.session, 'entry'))
    add.enabled = writable
    this.element.replaceChildren(make('h2', '', {}, say('grid.addFirst.title')), make('p', '', {}, say('grid.addFirst.about')), add.element)
  }
}
