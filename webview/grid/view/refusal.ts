import { createButton } from '../../controls'
import { say } from '../strings'
import type { Session } from '../model/session'
import { beginEdit, letGo } from '../model/write'
import { make } from './dom'
import type { GridBody } from './gridBody'

/** Beside the current cell, when its text was turned back: why, and the text offered again. */
export class Refusal {
  #drawn = ''
  #element: HTMLElement | undefined

  constructor(readonly session: Session, readonly body: GridBody) {}

  draw(): void {
    const { session, body } = this
    const typed = session.editing ? undefined : session.pendingAt(session.active)
    const key = typed?.state === 'refused' ? JSON.stringify([typed.text, typed.why, session.active, body.boxOf(session.active)]) : ''
    if (key === this.#drawn) return
    this.#drawn = key
    this.#element?.remove()
    if (!typed || typed.state !== 'refused') return
    const again = createButton(say('refused.again'), 'primary', () => beginEdit(session, 'edit', 'all'))
    const discard = createButton(say('refused.letGo'), 'plain', () => {
      letGo(session)
      session.ports.changed({ kind: 'focus' })
    })
    this.#element = make('div', 'refusal', {},
      make('div', 'refusal-why', {}, make('span', 'mark mark-error', { 'aria-hidden': 'true' }), say('refused.title', typed.why ?? '')),
      make('div', 'refusal-buttons', {}, again.element, discard.element, make('span', 'refusal-keys', {}, say('refused.keys'))))
    body.overlay.append(this.#element)
    this.#place(this.#element)
  }

  #place(element: HTMLElement): void {
    const { body } = this
    const box = body.boxOf(this.session.active)
    const { scrollLeft, scrollTop, clientWidth, clientHeight } = body.scroller
    const above = box.top + box.height + element.offsetHeight > scrollTop + clientHeight
    element.style.left = `${Math.max(0, Math.min(box.left, scrollLeft + clientWidth - element.offsetWidth - 12))}px`
    element.style.top = `${above ? box.top - element.offsetHeight - 2 : box.top + box.height + 2}px`
  }
}
