import { make } from './dom'

/** A small dialog beside a place on the page. One is open at a time; Escape closes it. */
export class Popover {
  #open: { element: HTMLElement; anchor: () => DOMRect; closed: () => void } | undefined

  /** Something was typed into it, so that nothing else takes its place. */
  held = false

  constructor(readonly root: HTMLElement, readonly focusBack: () => void) {
    window.addEventListener('resize', () => this.place())
  }

  get isOpen(): boolean {
    return this.#open !== undefined
  }

  /** Shows `content` under the anchor; gives the dialog. `stops` are what Tab goes round, in order. */
  show(name: string, content: HTMLElement, stops: readonly HTMLElement[], anchor: () => DOMRect, closed: () => void = () => undefined): void {
    if (this.held) return this.focus()
    this.close(false)
    const element = make('div', 'popover', { role: 'dialog', 'aria-label': name }, content)
    element.addEventListener('keydown', (event) => this.#key(event, stops))
    this.#open = { element, anchor, closed }
    this.root.append(element)
    this.place()
  }

  /** Puts the keyboard back into what is open. */
  focus(): void {
    this.#open?.element.querySelector<HTMLElement>('vscode-text-area, vscode-text-field')?.focus()
  }

  close(focusBack = true): void {
    const open = this.#open
    if (!open) return
    this.#open = undefined
    this.held = false
    open.element.remove()
    open.closed()
    if (focusBack) this.focusBack()
  }

  /** Beside its anchor and within the page. */
  place(): void {
    if (!this.#open) return
    const { element, anchor } = this.#open
    const { left, top, bottom } = anchor()
    const { offsetWidth: width, offsetHeight: height } = element
    const room = document.documentElement
    const below = bottom + 4 + height <= room.clientHeight || top - height - 4 < 0
    element.style.left = `${Math.max(8, Math.min(left, room.clientWidth - width - 8))}px`
    element.style.top = `${Math.max(8, below ? Math.min(bottom + 4, room.clientHeight - height - 8) : top - height - 4)}px`
  }

  #key(event: KeyboardEvent, stops: readonly HTMLElement[]): void {
    if (event.key === 'Escape') {
      event.preventDefault()
      event.stopPropagation()
      this.close()
    } else if (event.key === 'Tab') {
      const at = stops.findIndex((stop) => stop === document.activeElement)
      const leaves = event.shiftKey ? at === 0 : at === stops.length - 1
      if (leaves) {
        event.preventDefault()
        stops[event.shiftKey ? stops.length - 1 : 0]?.focus()
      }
    }
  }
}
