import type { Card } from '../../../src/core/card/card'
import type { FromWebview, ToWebview } from '../../../src/protocol'
import { createButton } from '../../controls'
import type { Session } from '../model/session'
import { HEADER, LABELS, sameSpot, type Spot } from '../model/spot'
import { say } from '../strings'
import { make } from './dom'
import type { GridBody } from './gridBody'
import type { Popover } from './popover'

type CardGiven = Extract<ToWebview, { type: 'cardGiven' }>

/** How long the pointer rests on a cell before its card comes. */
const restMs = 600

/**
 * The card of a cell: what it is, where, which way to turn it and what that does. It comes when the pointer rests on
 * a cell, and on a key for those who use none; asked for each time, so that it is never older than the notebook.
 */
export class Cards {
  #asked = 0
  #then: ((given: CardGiven) => void) | undefined
  #resting: ReturnType<typeof setTimeout> | undefined
  #over: Spot | undefined
  #shown: HTMLElement | undefined

  constructor(readonly session: Session, readonly body: GridBody, readonly popover: Popover, readonly root: HTMLElement) {
    body.surface.addEventListener('pointermove', (event) => event.buttons === 0 && this.#point(body.spotAt(event.clientX, event.clientY)))
    for (const name of ['pointerdown', 'pointerleave', 'keydown', 'wheel']) body.surface.addEventListener(name, () => this.hide(), { passive: true })
  }

  take(given: CardGiven): void {
    if (given.id === this.#asked) this.#then?.(given)
  }

  /** Opens the card of the current cell as a dialog that can be read with the keyboard. */
  openCurrent(): void {
    this.hide()
    const spot = this.session.active
    this.#ask(spot, ({ card, drawing }) => {
      if (!card) return this.session.ports.announce(say('card.none'), 'shown')
      this.#read(card, drawing, spot)
    })
  }

  /** Opens the next step after the current entry, else after the last one, beside that entry's header. */
  openAdvice(): void {
    this.hide()
    const { model, active } = this.session
    const column = active.column === LABELS ? model.ground.columns - 1 : active.column
    const key = model.column(column)?.key
    if (key === undefined) return this.session.ports.announce(say('advice.none'), 'shown')
    const header = { row: HEADER, column }
    this.body.reveal(header)
    this.#send((id) => ({ type: 'adviceAsked', id, column: key }), ({ card }) => card && this.#read(card, undefined, header))
  }

  /** A card as a dialog that can be read with the keyboard. */
  #read(card: Card, drawing: string | undefined, spot: Spot): void {
    const parts = cardParts(card, drawing)
    // A screen reader says the dialog's name and this much at once; the rest is a document to go through.
    const upTo = Math.max(0, card.sections.findIndex(({ drawn }) => drawn))
    const first = [parts[0]!.querySelector('.card-subtitle'), ...parts.slice(1, upTo + 2)].filter((part) => part !== null)
    first.forEach((part, at) => { part.id = `card-part-${at}` })
    const content = make('div', 'card card-read', { tabindex: '0', role: 'document', 'aria-describedby': first.map(({ id }) => id).join(' ') }, ...parts)
    const stops = [content, ...this.#buttons(card)]
    this.popover.show(card.title, stops.length > 1 ? make('div', '', {}, ...stops) : content, stops, () => this.body.rectOf(spot))
    content.focus({ preventScroll: true })
  }

  /** What can be done from a card: its charts can be shown. */
  #buttons({ chart }: Card): HTMLElement[] {
    if (!chart) return []
    const show = createButton(say('card.showChart'), 'plain', () => {
      this.popover.close(false)
      this.session.charts.show(chart, true)
    })
    show.element.classList.add('card-button')
    return [show.element]
  }

  hide(): void {
    clearTimeout(this.#resting)
    this.#over = undefined
    this.#shown?.remove()
    this.#shown = undefined
  }

  #point(spot: Spot): void {
    if (this.#over && sameSpot(this.#over, spot)) return
    this.hide()
    this.#over = spot
    this.#resting = setTimeout(() => this.popover.isOpen || this.session.editing || this.#ask(spot, (given) => this.#showBeside(spot, given)), restMs)
  }

  #ask(spot: Spot, then: (given: CardGiven) => void): void {
    const row = this.session.model.row(spot.row)
    if (spot.row === HEADER || !row || row.kind === 'group') return
    const column = spot.column === LABELS ? undefined : this.session.model.column(spot.column)?.key
    this.#send((id) => ({ type: 'cardAsked', id, row: row.key, ...(column === undefined ? {} : { column }) }), then)
  }

  #send(question: (id: number) => FromWebview, then: (given: CardGiven) => void): void {
    this.#then = then
    this.session.ports.send(question(++this.#asked))
  }

  #showBeside(spot: Spot, { card, drawing }: CardGiven): void {
    if (!card || !this.#over || !sameSpot(this.#over, spot)) return
    const element = make('div', 'card card-hover', { role: 'tooltip' }, ...cardParts(card, drawing))
    this.root.append(element)
    this.#shown = element
    // The pointer cannot scroll it: what is too long for one column is laid out in two, and what is still too long says so.
    const isCut = () => element.scrollHeight > element.clientHeight + 1 || element.scrollWidth > element.clientWidth + 1
    if (isCut()) element.classList.add('card-wide')
    if (isCut()) element.append(make('div', 'card-more', {}, say('card.more')))
    const { left, right, top } = this.body.rectOf(spot)
    const { clientWidth, clientHeight } = document.documentElement
    // Beside the cell rather than over it, so that its neighbours can still be read.
    const fits = right + 6 + element.offsetWidth <= clientWidth - 8
    element.style.left = `${Math.max(8, fits ? right + 6 : left - element.offsetWidth - 6)}px`
    element.style.top = `${Math.max(8, Math.min(top, clientHeight - element.offsetHeight - 8))}px`
  }
}

/** The contents of a card. The drawing is made by the host as SVG and says the same as the sentences beside it. */
function cardParts(card: Card, drawing: string | undefined): HTMLElement[] {
  const head = make('div', 'card-head', {}, make('h2', 'card-title', {}, card.title), ...(card.subtitle ? [make('div', 'card-subtitle', {}, card.subtitle)] : []))
  const sections = card.sections.map(({ heading, lines, caution, drawn }) => {
    const words = lines.map((line) => make('p', '', {}, line))
    const body = drawn && drawing ? [make('div', 'card-drawn', {}, make('div', 'card-words', {}, ...words), picture(drawing))] : words
    return make('section', caution ? 'card-caution' : '', {}, ...(heading ? [make('h3', '', {}, heading)] : []), ...body)
  })
  return [head, ...sections]
}

function picture(svg: string): HTMLElement {
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
  // Whoever does not see it has just been told the same.
  return make('div', 'card-drawing', { 'aria-hidden': 'true' }, parsed.nodeName === 'svg' ? document.importNode(parsed, true) : '')
}
