import { say } from '../strings'
import type { Session } from '../model/session'
import { make } from './dom'

/** The cautions below the grid, folded away until asked for. */
export class Cautions {
  readonly #details = make('details', '')
  readonly element = make('footer', 'cautions', {}, this.#details)
  readonly #title = make('summary', '')
  readonly #list = make('ul', '')

  constructor(readonly session: Session) {
    this.#details.append(this.#title, this.#list)
    this.#details.open = session.cautionsOpen
    this.#details.addEventListener('toggle', () => {
      if (this.#details.open !== session.cautionsOpen) session.show('cautions', this.#details.open)
    })
  }

  draw(): void {
    const { cautions } = this.session.model.view
    this.element.hidden = cautions.length === 0
    this.#title.textContent = say('cautions.title')
    this.#list.replaceChildren(...cautions.map((caution) => make('li', '', {}, caution)))
  }
}
