import { createButton } from '../../controls'
import { say, type StringKey } from '../strings'
import { findNext, foundAt, openFind, replaceAll, replaceOne } from '../model/find'
import type { Session } from '../model/session'
import { make, setAttribute } from './dom'

/** Find and replace in the grid, which the browser's own could not: most of it is not on the page. */
export class FindBar {
  readonly element = make('section', 'tool-bar', { role: 'search', hidden: '' })
  readonly #text = make('input', 'tool-field', { type: 'text', id: 'find-text', spellcheck: 'false', autocomplete: 'off' })
  readonly #replacement = make('input', 'tool-field', { type: 'text', id: 'find-replacement', spellcheck: 'false', autocomplete: 'off' })
  readonly #count = make('span', 'tool-status')
  readonly #labels = [this.#text, this.#replacement].map((field) => Object.assign(make('label', 'tool-label'), { htmlFor: field.id }))
  readonly #buttons = ([
    ['find.previous', () => findNext(this.session, true)], ['find.next', () => findNext(this.session)],
    ['find.replace', () => replaceOne(this.session)], ['find.replaceAll', () => replaceAll(this.session)],
  ] satisfies [StringKey, () => void][]).map(([name, press]) => ({ name, button: createButton('', 'plain', press) }))
  readonly #close = createButton('×', 'quiet', () => openFind(this.session, false))

  constructor(readonly session: Session) {
    this.#text.addEventListener('input', () => {
      session.find.text = this.#text.value
      if (this.#text.value.trim() !== '') findNext(session, false, { stay: true })
      this.draw(false)
    })
    this.#replacement.addEventListener('input', () => { session.find.replacement = this.#replacement.value })
    this.element.addEventListener('keydown', (event) => this.#key(event))
    const [previous, next, replace, every] = this.#buttons.map(({ button }) => button.element)
    this.element.append(this.#labels[0]!, this.#text, this.#count, previous!, next!, make('span', 'tool-group', {}, this.#labels[1]!, this.#replacement, replace!, every!), this.#close.element)
  }

  draw(focus: boolean): void {
    const { find, model } = this.session
    this.element.hidden = !find.open || model.all.state === 'empty'
    if (this.element.hidden) return
    setAttribute(this.element, 'aria-label', say('find.name'))
    this.#labels[0]!.textContent = say('find.text')
    this.#labels[1]!.textContent = say('find.replacement')
    for (const { name, button } of this.#buttons) button.label = say(name)
    for (const { button } of this.#buttons.slice(2)) button.enabled = model.writable
    this.#count.textContent = find.text.trim() === '' ? '' : say('find.count', ...foundAt(this.session))
    setAttribute(this.#close.element, 'aria-label', say('find.close'))
    if (focus) this.#text.select()
  }

  #key(event: KeyboardEvent): void {
    const { target, key } = event
    if (key === 'Escape') openFind(this.session, false)
    else if (key === 'Enter' && target === this.#text) findNext(this.session, event.shiftKey)
    else if (key === 'Enter' && target === this.#replacement) replaceOne(this.session)
    else return
    event.preventDefault()
    event.stopPropagation()
  }
}
