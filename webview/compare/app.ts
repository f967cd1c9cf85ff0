import type { FromCompare, ToCompare } from '../../src/protocol'
import { Announcer } from '../page/announcer'
import { make } from '../page/dom'
import { isReadable } from './model/describe'
import { readPageKey } from './model/keys'
import type { SavedState } from './model/savedState'
import { Session } from './model/session'
import { Sides } from './view/sides'
import { Strip } from './view/strip'
import { Table } from './view/table'
import { TextPane } from './view/textPane'
import { TopBar } from './view/topBar'

export interface AppPorts {
  send(message: FromCompare): void
  save(state: SavedState): void
}

/** The page: puts the parts together and has each of them drawn when what it shows has changed. */
export class App {
  readonly #session: Session
  readonly #announcer = new Announcer()
  readonly #top: TopBar
  readonly #sides: Sides
  readonly #notes = make('div', 'notes', { role: 'status' })
  readonly #table: Table
  readonly #panes: { left: TextPane; right: TextPane }
  readonly #strip: Strip
  #saving: ReturnType<typeof setTimeout> | undefined
  /** How far to scroll as soon as there is something to scroll. */
  #scrollTo: number

  constructor(readonly root: HTMLElement, readonly ports: AppPorts, saved: SavedState) {
    const session = this.#session = new Session({
      send: ports.send,
      announce: (text) => this.#announcer.say(text, false),
      changed: (what) => (what === 'view' ? this.#drawAll() : this.#drawActive()),
    }, saved)
    this.#scrollTo = saved.scrollTop
    this.#top = new TopBar(session)
    this.#sides = new Sides(session)
    this.#table = new Table(session)
    this.#panes = { left: new TextPane(session, 'left'), right: new TextPane(session, 'right') }
    this.#strip = new Strip(session)
    root.classList.add('is-loading')
    const panes = make('main', 'panes', {}, this.#panes.left.element, this.#table.scroller, this.#panes.right.element)
    root.append(this.#top.element, this.#sides.element, this.#notes, panes, this.#strip.element, this.#announcer.element)
    this.#listen()
  }

  receive(message: ToCompare): void {
    this.#session.receive(message)
  }

  save(): void {
    const { view, active } = this.#session
    if (view) this.ports.save({ sources: view.sources, scrollTop: this.#table.scroller.scrollTop, ...(active ? { active } : {}) })
  }

  #listen(): void {
    // The keyboard is on no element of ours where nothing differs and all that is alike is hidden.
    document.addEventListener('keydown', (event) => {
      const key = event.isComposing ? undefined : readPageKey(event)
      if (!key || !this.#session.do(key)) return
      event.preventDefault()
      event.stopPropagation()
    })
    this.#table.scroller.addEventListener('scroll', () => {
      clearTimeout(this.#saving)
      this.#saving = setTimeout(() => this.save(), 100)
    })
    window.addEventListener('focus', () => document.activeElement === document.body && this.#table.follow(true))
  }

  #drawAll(): void {
    const { view } = this.#session
    if (!view) return
    const { comparison } = view
    this.root.classList.remove('is-loading')
    this.#top.draw()
    this.#sides.draw()
    this.#notes.replaceChildren(...comparison.notes.map((note) => make('div', 'banner', {}, make('span', 'mark mark-info', { 'aria-hidden': 'true' }), make('p', 'banner-words', {}, note))))
    this.#table.scroller.hidden = !isReadable(comparison.left) && !isReadable(comparison.right)
    this.#panes.left.draw(comparison.left)
    this.#panes.right.draw(comparison.right)
    this.#table.draw()
    if (this.#scrollTo > 0) this.#table.scroller.scrollTop = this.#scrollTo
    this.#scrollTo = 0
    this.#drawActive()
    if (document.hasFocus() && document.activeElement === document.body) this.#table.follow(true)
  }

  #drawActive(): void {
    this.#strip.draw()
    this.save()
  }
}
