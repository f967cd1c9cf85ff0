import type { GridPlace } from '../../../src/core/grid/view'
import { createButton } from '../../controls'
import { say } from '../strings'
import { uncover } from '../model/hide'
import type { Pending } from '../model/pending'
import { homeless, nameHomeless } from '../model/restore'
import { sentence } from '../model/sentence'
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
    const { gone, hidden } = homeless(session)
    const key = JSON.stringify([view.state, view.columns.length > 0, view.trouble, view.readOnly, session.outbox.silent, typed, session.notice, gone, hidden])
    if (key === this.#drawn) return
    this.#drawn = key
    this.element.replaceChildren(...[this.#silent(typed), this.#trouble(), this.#gone(gone), this.#hidden(hidden), this.#notice()].filter((each) => each !== undefined))
  }

  #silent(typed: readonly string[]): HTMLElement | undefined {
    if (!this.session.outbox.silent) return undefined
    const banner = make('div', 'banner banner-error', {}, mark('error'), words(say('silent.title'), say('silent.about')))
    if (typed.length > 0) banner.append(make('span', 'banner-typed', {}, say('silent.typed', typed.join(' · '))))
    return banner
  }

  /** What was typed into cells that the notebook has no more, to be copied from here or let go of. */
  #gone(gone: readonly Pending[]): HTMLElement | undefined {
    if (gone.length === 0) return undefined
    const discard = createButton(say('refused.letGo'), 'plain', () => this.#changed(gone.flatMap((each) => this.session.pending.letGo(each))))
    return make('div', 'banner banner-warning', {}, mark('warning'), words('', say('refused.gone')), discard.element, typedWords(gone))
  }

  #hidden(hidden: readonly Pending[]): HTMLElement | undefined {
    const [first] = hidden
    if (!first) return undefined
    const show = createButton(say('refused.show'), 'plain', () => {
      const spot = uncover(this.session, first)
      if (spot) this.session.select(spot)
      this.session.ports.changed({ kind: 'focus' })
    })
    return make('div', 'banner banner-warning', {}, mark('warning'), words('', say('refused.hidden')), show.element, typedWords(hidden))
  }

  #changed(places: readonly GridPlace[]): void {
    this.session.ports.changed({ kind: 'pending', places })
    this.session.ports.changed({ kind: 'focus' })
  }

  #trouble(): HTMLElement | undefined {
    const { state, trouble, readOnly, columns } = this.session.model.view
    if (state === 'ready' && readOnly === undefined) return undefined
    if (state === 'empty' && !trouble) return undefined
    const broken = state === 'broken'
    const banner = make('div', `banner banner-${broken ? 'error' : 'info'}`, {}, mark(broken ? 'error' : 'info'))
    const message = trouble?.message ?? readOnly ?? ''
    banner.append(broken ? words(sentence(message), say(columns.length > 0 ? 'trouble.broken' : 'trouble.unread')) : words(say('trouble.newer'), message))
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

const typedWords = (texts: readonly Pending[]) => make('span', 'banner-typed', {}, texts.map(nameHomeless).join('\n'))

const mark = (severity: 'error' | 'warning' | 'info') => make('span', `mark mark-${severity}`, { 'aria-hidden': 'true' })

function words(strong: string, rest: string): HTMLElement {
  return make('span', 'banner-words', {}, ...(strong ? [make('strong', '', {}, strong), ' '] : []), rest)
}
