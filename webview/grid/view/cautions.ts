import { say } from '../strings'
import type { Session } from '../model/session'
import { make } from './dom'

/** The cautions below the grid, folded away until asked for. */
export class Cautions {
  readonly element = make('details', 'cautions')
  readonly #title = make('summary', '')
  readonly #list = make('ul', '')

  constructor(readonly session: Session) {
    this.element.append(this.#title, this.#list)
    this.element.open = session.cautionsOpen
    this.element.addEventListener('toggle', () => {
      if (this.element.open !== session.cautionsOpen) session.show('cautions', this.element.open)
    })
  }

  draw(): void {
    const { cautions } = this.session.model.view
    this.element.hidden = cautions.length === 0
    this.#title.textContent = say('cautions.title')
    this.#list.replaceChildren(...cautions.map((caution) => make('li', '', {}, caution)))
  }
}
