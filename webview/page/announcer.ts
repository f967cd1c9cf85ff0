import { make } from './dom'

/** Speaks to screen readers. A text said twice is said twice: the region is emptied in between. */
export class Announcer {
  readonly element = make('div', 'unseen')
  readonly #polite = make('div', '', { 'aria-live': 'polite' })
  readonly #urgent = make('div', '', { 'aria-live': 'assertive' })

  constructor() {
    this.element.append(this.#polite, this.#urgent)
  }

  say(text: string, urgent: boolean): void {
    const region = urgent ? this.#urgent : this.#polite
    region.textContent = ''
    requestAnimationFrame(() => { region.textContent = text })
  }
}
