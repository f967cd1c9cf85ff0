import { createButton } from '../../controls'
import { say } from '../strings'
import type { Session } from '../model/session'
import { make } from './dom'

/** What stands between the bar and the grid when something is amiss with the notebook as a whole. */
export class Banners {
  readonly element = make('div', 'banners', { role: 'status' })
  #drawn = ''

  constructor(readonly session: Session) {}

  draw(): void {
    const { session } = this
    const { view } = session.model
    const typed = session.outbox.silent ? session.pending.unwritten.map(({ text }) => text) : []
    const key = JSON.stringify([view.state, view.trouble, view.readOnly, session.outbox.silent, typed, session.notice])
    if (key === this.#drawn) return
    this.#drawn = key
    this.element.replaceChildren(...[this.#silent(typed), this.#trouble(), this.#notice()].filter((each) => each !== undefined))
  }

  #silent(typed: readonly string[]): HTMLElement | undefined {
    if (!this.session.outbox.silent) return undefined
    const banner = make('div', 'banner banner-error', {}, mark('error'), words(say('silent.title'), say('silent.about')))
    if (typed.length > 0) banner.append(make('span', 'banner-typed', {}, say('silent.typed', typed.join(' · '))))
    return banner
  }

  #trouble(): HTMLElement | undefined {
    const { state, trouble, readOnly } = this.session.model.view
    if (state === 'ready' && readOnly === undefined) return undefined
    if (state === 'empty' && !trouble) return undefined
    const broken = state === 'broken'
    const banner = make('div', `banner banner-${broken ? 'error' : 'info'}`, {}, mark(broken ? 'error' : 'info'))
    const message = trouble?.message ?? readOnly ?? ''
    banner.append(broken ? words(message, say('trouble.broken')) : words(say('trouble.newer'), message))
    if (trouble) {
      const open = createButton(say('trouble.line', trouble.line), 'plain', () => this.session.ports.send({ type: 'openText', line: trouble.line }))
      banner.append(open.element)
    }
    return banner
  }

  #notice(): HTMLElement | undefined {
    const { notice } = this.session
    if (notice === undefined) return undefined
    const close = createButton('×', 'quiet', () => this.session.note(undefined))
    close.element.setAttribute('aria-label', say('refused.letGo'))
    return make('div', 'banner banner-warning', {}, mark('warning'), words('', notice), close.element)
  }
}

const mark = (severity: 'error' | 'warning' | 'info') => make('span', `mark mark-${severity}`, { 'aria-hidden': 'true' })

function words(strong: string, rest: string): HTMLElement {
  return make('span', 'banner-words', {}, ...(strong ? [make('strong', '', {}, strong), ' '] : []), rest)
}
