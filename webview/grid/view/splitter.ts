import { make, setAttribute } from './dom'

const stepShare = 0.05

/** The upper edge of a panel, to be drawn higher or lower with the pointer or with the arrow keys. Heights are shares of the page's. */
export class Splitter {
  readonly element = make('div', 'splitter', { role: 'separator', tabindex: '0', 'aria-orientation': 'horizontal', 'aria-valuemin': '20', 'aria-valuemax': '80' })

  constructor(readonly share: () => number, readonly resize: (share: number) => void) {
    this.element.addEventListener('pointerdown', (event) => {
      if (event.button !== 0) return
      event.preventDefault()
      this.element.setPointerCapture(event.pointerId)
    })
    this.element.addEventListener('pointermove', (event) => {
      if (this.element.hasPointerCapture(event.pointerId)) this.#drag(event.clientY)
    })
    this.element.addEventListener('keydown', (event) => this.#key(event))
  }

  draw(name: string): void {
    setAttribute(this.element, 'aria-label', name)
    setAttribute(this.element, 'aria-valuenow', String(Math.round(this.share() * 100)))
  }

  #drag(clientY: number): void {
    const { bottom } = this.element.parentElement!.getBoundingClientRect()
    this.resize((bottom - clientY) / document.documentElement.clientHeight)
  }

  #key(event: KeyboardEvent): void {
    const by = { ArrowUp: stepShare, ArrowDown: -stepShare, Home: 1, End: -1 }[event.key]
    if (by === undefined || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    event.stopPropagation()
    this.resize(this.share() + by)
  }
}
