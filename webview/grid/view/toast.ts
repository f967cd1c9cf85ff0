import { make } from './dom'

const shownMs = 4000

/** A sentence beside the current cell that goes by itself, for those who see: why a key did nothing. */
export class Toast {
  readonly element = make('div', 'toast', { 'aria-hidden': 'true' })
  #going: ReturnType<typeof setTimeout> | undefined

  constructor() {
    this.element.hidden = true
  }

  show(text: string, beside: DOMRect): void {
    clearTimeout(this.#going)
    this.element.textContent = text
    this.element.hidden = false
    const { clientWidth, clientHeight } = document.documentElement
    this.element.style.left = `${Math.max(8, Math.min(beside.left, clientWidth - this.element.offsetWidth - 8))}px`
    this.element.style.top = `${Math.max(8, Math.min(beside.bottom + 4, clientHeight - this.element.offsetHeight - 8))}px`
    this.#going = setTimeout(() => this.hide(), shownMs)
  }

  hide(): void {
    this.element.hidden = true
  }
}
