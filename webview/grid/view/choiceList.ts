import { make, setAttribute } from './dom'
import type { Box } from './places'

/** The choices below an input, after the combobox pattern: the input keeps the focus and may hold other text too. */
export class ChoiceList {
  readonly #list: HTMLElement
  #options: HTMLElement[] = []
  #at = -1

  constructor(readonly input: HTMLElement, readonly choices: readonly string[], name: string, readonly picked: () => void) {
    this.#list = make('div', 'choices', { role: 'listbox', id: 'choices', 'aria-label': name })
    input.setAttribute('role', 'combobox')
    input.setAttribute('aria-autocomplete', 'list')
    input.setAttribute('aria-controls', 'choices')
    this.#list.addEventListener('pointerdown', (event) => {
      event.preventDefault()
      this.#at = this.#options.indexOf(event.target as HTMLElement)
      if (this.#at >= 0) this.picked()
    })
  }

  /** The choice that is lit, or undefined when what is typed stands for itself. */
  get chosen(): string | undefined {
    return this.#options[this.#at]?.textContent ?? undefined
  }

  show(parent: HTMLElement, typed: string): void {
    parent.append(this.#list)
    this.narrow(typed)
  }

  hide(): void {
    this.#list.remove()
  }

  /** Below the cell, or above it where there is no room below. */
  place({ left, top, width, height }: Box, sight: Box): void {
    const { style, offsetHeight } = this.#list
    const fits = top + height + offsetHeight <= sight.top + sight.height
    Object.assign(style, { left: `${left}px`, top: `${fits ? top + height : top - offsetHeight}px`, minWidth: `${width}px` })
  }

  /** Shows the choices that begin with what is typed, all of them when nothing is, and lights the first match. */
  narrow(typed: string): void {
    const start = typed.trim().toLowerCase()
    const fitting = this.choices.filter((choice) => choice.toLowerCase().startsWith(start))
    this.#options = fitting.map((choice, index) => make('div', 'choice', { role: 'option', id: `choice-${index}` }, choice))
    this.#list.replaceChildren(...this.#options)
    this.#list.hidden = fitting.length === 0
    setAttribute(this.input, 'aria-expanded', String(fitting.length > 0))
    this.#light(start === '' ? -1 : 0)
  }

  /** Takes the keys that move among the choices. */
  key(event: KeyboardEvent): boolean {
    const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
    if (by === 0 || this.#options.length === 0) return false
    event.preventDefault()
    event.stopPropagation()
    this.#light((this.#at + by + this.#options.length) % this.#options.length)
    return true
  }

  #light(index: number): void {
    this.#at = Math.min(index, this.#options.length - 1)
    this.#options.forEach((option, at) => setAttribute(option, 'aria-selected', String(at === this.#at)))
    setAttribute(this.input, 'aria-activedescendant', this.#at < 0 ? undefined : `choice-${this.#at}`)
    this.#options[this.#at]?.scrollIntoView({ block: 'nearest' })
  }
}
