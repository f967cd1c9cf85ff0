import type { SideName } from '../../../src/protocol'
import { make, setAttribute } from '../../page/dom'
import { sideFacts, sideNames } from '../model/describe'
import type { Session } from '../model/session'
import { say } from '../strings'

const keys = { left: 'L', right: 'R' } as const

/** What stands on either side, and the button to choose something else there. */
export class Sides {
  readonly element = make('div', 'sides')
  readonly #cards = { left: new Card(() => this.#choose('left')), right: new Card(() => this.#choose('right')) }

  constructor(readonly session: Session) {
    this.element.append(this.#cards.left.element, this.#cards.right.element)
  }

  draw(): void {
    for (const side of sideNames) this.#drawSide(side)
  }

  #drawSide(side: SideName): void {
    const { entry, file, readOnly } = this.session.view!.comparison[side]
    const card = this.#cards[side]
    const name = say(side === 'left' ? 'side.left' : 'side.right')
    const title = entry?.key ?? say('side.none')
    setAttribute(card.element, 'aria-label', name)
    setAttribute(card.choose, 'aria-label', say('side.choose', name, `${title}, ${file}`))
    setAttribute(card.choose, 'title', say('side.choose.title', keys[side]))
    card.name.textContent = title
    card.file.textContent = file
    setAttribute(card.file, 'title', file)
    card.facts.textContent = entry ? sideFacts(this.session.view!.comparison[side]).join(' · ') : ''
    card.reason.textContent = entry?.reason ?? ''
    card.readOnly.textContent = readOnly === undefined ? '' : say('side.readOnly', readOnly)
    card.readOnly.hidden = readOnly === undefined
  }

  #choose(side: SideName): void {
    this.session.do({ kind: 'choose', side })
  }
}

class Card {
  readonly name = make('span', 'side-name')
  readonly choose = make('button', 'side-choose', { type: 'button' }, this.name, make('span', 'side-more', { 'aria-hidden': 'true' }, '▾'))
  readonly readOnly = make('span', 'side-held')
  readonly facts = make('span', 'side-facts')
  readonly file = make('p', 'side-file')
  readonly reason = make('p', 'side-reason')
  readonly element = make('section', 'side', {}, make('div', 'side-head', {}, this.choose, this.facts, this.readOnly), this.file, this.reason)

  constructor(press: () => void) {
    this.choose.addEventListener('click', press)
  }
}
