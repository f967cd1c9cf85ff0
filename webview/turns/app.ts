import type { CompareSide } from '../../src/core/compare/comparison'
import type { FromTurns, ToTurns, TurnsView } from '../../src/protocol'
import { Announcer } from '../page/announcer'
import { make, setAttribute } from '../page/dom'
import { readSavedState, sameSources, type SavedState } from './model/savedState'
import { kept, nextUnticked, ticksIn } from './model/ticks'
import { say } from './strings'
import { listParts } from './view/list'

export interface AppPorts {
  send(message: FromTurns): void
  save(state: SavedState): void
}

/** The page of a turn list. What is ticked is the page's alone: it is about the machine in the garage, not the notebook. */
export class App {
  readonly #saved: SavedState
  #shown: TurnsView | undefined
  #ticked = new Set<string>()
  #large: boolean
  readonly #announcer = new Announcer()
  readonly #title = make('h1', '')
  readonly #states = make('p', 'states')
  readonly #progress = make('p', 'progress')
  readonly #bar = make('progress', 'progress-bar', { 'aria-hidden': 'true' })
  readonly #notice = make('p', 'notice', { role: 'status' })
  readonly #list = make('div', 'list')
  readonly #hint = make('p', 'hint')
  readonly #actions: HTMLElement
  readonly #copy = actionButton(() => this.ports.send({ type: 'copyAsked' }))
  readonly #save = actionButton(() => this.ports.send({ type: 'saveAsked' }))
  readonly #larger = actionButton(() => this.#enlarge(!this.#large))
  readonly #untick = actionButton(() => this.#untickAll())

  constructor(readonly root: HTMLElement, readonly ports: AppPorts, saved: unknown) {
    this.#saved = readSavedState(saved)
    this.#large = this.#saved.large
    this.#actions = make('div', 'actions', { role: 'group' }, this.#copy, this.#save, this.#larger, this.#untick)
    const head = make('header', 'head', {}, make('div', 'head-names', {}, this.#title, this.#states), this.#actions, make('div', 'head-progress', {}, this.#bar, this.#progress))
    root.append(head, make('main', 'page', {}, this.#notice, this.#list, this.#hint), this.#announcer.element)
    this.#list.addEventListener('change', (event) => event.target instanceof HTMLInputElement && this.#tick(event.target))
    this.#list.addEventListener('keydown', (event) => this.#key(event))
    // Lines wrap otherwise then, and what one was at would be out of sight.
    window.addEventListener('resize', () => document.activeElement instanceof HTMLInputElement && goTo(document.activeElement))
    this.#enlarge(this.#large)
  }

  receive({ view }: ToTurns): void {
    const before = this.#shown
    const sameList = sameSources(before?.sources ?? this.#saved.sources, view.sources)
    const focused = this.#focusedTick()
    const had = before ? this.#ticked : new Set(this.#saved.ticked)
    this.#ticked = sameList ? kept(view.list, had) : new Set()
    this.#shown = view
    this.#notice.textContent = before && sameList && JSON.stringify(before.list) !== JSON.stringify(view.list) ? say('changed') : ''
    this.#draw(view)
    const again = this.#boxes().find(({ dataset }) => dataset.tick === focused) ?? (before ? undefined : this.#boxes().find((box) => !box.checked))
    // What has to be known first stays in sight.
    again?.focus({ preventScroll: before === undefined })
    this.#keep()
  }

  /** Only the first time the page itself takes the focus: afterwards it is where a person put it. */
  focus(): void {
    if (document.activeElement === document.body) (this.#boxes().find((box) => !box.checked) ?? this.#boxes()[0])?.focus({ preventScroll: true })
  }

  #draw({ list, drawings }: TurnsView): void {
    setAttribute(this.#actions, 'aria-label', say('bar.name'))
    for (const [button, key] of [[this.#copy, 'bar.copy'], [this.#save, 'bar.save'], [this.#larger, 'bar.larger'], [this.#untick, 'bar.untick']] as const) button.textContent = say(key)
    this.#title.textContent = say('title', list.to.title)
    this.#states.replaceChildren(make('span', '', {}, say('from', nameOf(list.from))), ' ', make('span', '', {}, say('to', nameOf(list.to))))
    this.#list.replaceChildren(...listParts(list, drawings))
    for (const box of this.#boxes()) box.checked = this.#ticked.has(box.dataset.tick!)
    this.#hint.textContent = this.#boxes().length > 0 ? say('hint') : ''
    this.#drawProgress()
  }

  #drawProgress(): void {
    const all = this.#boxes().length
    const left = all - this.#ticked.size
    this.#progress.textContent = all === 0 ? '' : left === 0 ? say('progress.done', all) : say('progress.left', left, all)
    this.#bar.hidden = all === 0
    this.#bar.max = Math.max(all, 1)
    this.#bar.value = this.#ticked.size
    this.#untick.disabled = this.#ticked.size === 0
    this.root.classList.toggle('is-done', all > 0 && left === 0)
    for (const box of this.#boxes()) box.closest('.turn')!.classList.toggle('is-ticked', box.checked)
  }

  #tick(box: HTMLInputElement): void {
    if (box.checked) this.#ticked.add(box.dataset.tick!)
    else this.#ticked.delete(box.dataset.tick!)
    this.#drawProgress()
    this.#announcer.say(this.#progress.textContent ?? '', false)
    this.#keep()
  }

  #untickAll(): void {
    this.#ticked.clear()
    for (const box of this.#boxes()) box.checked = false
    this.#drawProgress()
    this.#announcer.say(this.#progress.textContent ?? '', false)
    this.#boxes()[0]?.focus()
    this.#keep()
  }

  #key(event: KeyboardEvent): void {
    const box = event.target
    if (!(box instanceof HTMLInputElement) || event.ctrlKey || event.metaKey || event.altKey) return
    const boxes = this.#boxes()
    const at = boxes.indexOf(box)
    const to = { ArrowDown: boxes[at + 1], ArrowUp: boxes[at - 1], Home: boxes[0], End: boxes.at(-1) }[event.key]
    if (event.key === 'Enter' && !event.shiftKey) this.#tickAndGoOn(box)
    else if (!['ArrowDown', 'ArrowUp', 'Home', 'End'].includes(event.key)) return
    event.preventDefault()
    if (to) goTo(to)
  }

  #tickAndGoOn(box: HTMLInputElement): void {
    if (!box.checked) {
      box.checked = true
      this.#tick(box)
    }
    const next = nextUnticked(ticksIn(this.#shown!.list), this.#ticked, box.dataset.tick!)
    const found = this.#boxes().find(({ dataset }) => dataset.tick === next)
    if (found) goTo(found)
  }

  #enlarge(large: boolean): void {
    this.#large = large
    this.root.classList.toggle('is-large', large)
    setAttribute(this.#larger, 'aria-pressed', String(large))
    if (this.#shown) this.#keep()
  }

  #boxes = () => [...this.#list.querySelectorAll<HTMLInputElement>('input.tick')]

  #focusedTick(): string | undefined {
    return document.activeElement instanceof HTMLInputElement ? document.activeElement.dataset.tick : undefined
  }

  #keep(): void {
    this.ports.save({ ...(this.#shown ? { sources: this.#shown.sources } : {}), ticked: [...this.#ticked], large: this.#large })
  }
}

/** A plain button: for four of them a page need not load a set of controls. */
function actionButton(press: () => void): HTMLButtonElement {
  const button = make('button', 'action', { type: 'button' })
  button.addEventListener('click', press)
  return button
}

/** With all of its step in sight: which way to turn stands below the box. */
function goTo(box: HTMLInputElement): void {
  box.focus({ preventScroll: true })
  for (const part of ['.step', '.turn']) box.closest(part)?.scrollIntoView({ block: 'nearest' })
}

const nameOf = ({ file, entry }: CompareSide) => [entry?.key, entry?.date, file].filter(Boolean).join(' · ')
