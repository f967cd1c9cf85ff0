import { make } from './dom'

let made = 0
const nextId = (kind: string) => `${kind}-${made++}`

/**
 * The recycled elements of the grid. A slot remembers what it last wrote, so that drawing the same again, or
 * drawing on scroll, touches only what differs: reading the page back would cost more than the writing.
 */
export class Slot {
  readonly element: HTMLElement
  readonly id = nextId('slot')
  readonly #text = document.createTextNode('')
  #className = ''
  #attributes = new Map<string, string | undefined>()
  #left = -1
  #width = -1

  /** The row or column drawn now; -1 for none. */
  index = -1

  constructor(role: string, readonly host: HTMLElement | undefined = undefined) {
    this.element = host ?? make('div', 'cell', { role })
    this.element.id = this.id
    if (!host) this.element.append(this.#text)
  }

  get text(): string {
    return this.#text.data
  }

  set text(text: string) {
    if (this.#text.data !== text) this.#text.data = text
  }

  set className(className: string) {
    if (this.#className === className) return
    this.#className = className
    this.element.className = className
  }

  set(name: string, value: string | undefined): void {
    const wanted = value === '' ? undefined : value
    if (this.#attributes.get(name) === wanted) return
    this.#attributes.set(name, wanted)
    if (wanted === undefined) this.element.removeAttribute(name)
    else this.element.setAttribute(name, wanted)
  }

  place(left: number, width: number): void {
    if (left !== this.#left) this.element.style.left = `${left}px`
    if (width !== this.#width) this.element.style.width = `${width}px`
    this.#left = left
    this.#width = width
  }
}

/** A slot of several words, each in an element of its own. */
export class WordsSlot extends Slot {
  readonly #parts: HTMLElement[]
  #words: string[] = []

  constructor(role: string, parts: readonly string[]) {
    super(role, make('div', '', { role }))
    this.#parts = parts.map((part) => make('span', part))
    this.element.append(...this.#parts)
  }

  write(...words: string[]): void {
    words.forEach((word, index) => {
      if (word !== this.#words[index]) this.#parts[index]!.textContent = word
    })
    this.#words = words
  }
}

/**
 * A row of the grid: its label and the cells in sight. The label's element stands elsewhere, so that all labels are
 * pinned as one; `aria-owns` brings it into its row and puts the cells into the order of their columns, which is
 * the order they are read aloud in, however they were recycled.
 */
export class RowSlot<Cell extends Slot = Slot> {
  readonly id = nextId('row')
  readonly element = make('div', 'row', { role: 'row', id: this.id })
  readonly cells: Cell[] = []
  readonly label: WordsSlot
  /** The cells of the pinned entries. */
  readonly pins: Cell[] = []
  #isConcealed = false
  index = -2
  #className = 'row'
  #owns = ''

  constructor(labelRole: 'rowheader' | 'columnheader', readonly makeCell: () => Cell) {
    this.label = new WordsSlot(labelRole, ['label-name', 'label-detail', 'label-unit'])
  }

  set className(className: string) {
    if (this.#className === className) return
    this.#className = className
    this.element.className = className
  }

  /** Has as many cells as asked for. */
  stretch(count: number): void {
    while (this.cells.length < count) {
      const slot = this.makeCell()
      this.cells.push(slot)
      this.element.append(slot.element)
    }
    for (const spare of this.cells.splice(count)) spare.element.remove()
  }

  /** Has so many cells that stay beside the labels, in `place`. */
  pinIn(place: HTMLElement, count: number): void {
    while (this.pins.length < count) {
      const slot = this.makeCell()
      this.pins.push(slot)
      place.append(slot.element)
    }
    for (const spare of this.pins.splice(count)) spare.element.remove()
  }

  /** Takes everything of the row off the page. */
  remove(): void {
    for (const { element } of [this, this.label, ...this.pins]) element.remove()
  }

  /** Shows nothing for the time being, or something again. */
  conceal(wanted: boolean): void {
    if (wanted === this.#isConcealed) return
    this.#isConcealed = wanted
    for (const { element } of [this, this.label, ...this.pins]) element.hidden = wanted
  }

  /** The cells that are drawn. */
  get drawn(): readonly Cell[] {
    return this.pins.length > 0 ? [...this.pins, ...this.cells] : this.cells
  }

  /** Takes label and pinned cells in, which stand elsewhere, and orders the cells. */
  tidy(): void {
    const ordered = this.cells.filter(({ index }) => index >= 0).sort((a, b) => a.index - b.index)
    const owns = [this.label, ...this.pins, ...ordered].map(({ id }) => id).join(' ')
    if (owns !== this.#owns) this.element.setAttribute('aria-owns', owns)
    this.#owns = owns
  }
}
