import { createButton, type ButtonControl } from '../../controls'
import { say } from '../strings'
import { filterEntries, filterRows, openFilter, showAll, shownWords } from '../model/hide'
import type { Session } from '../model/session'
import { make, setAttribute } from './dom'

/** What is hidden of the grid, and how much is left. It stays while anything is filtered, so that nobody misses a row in vain. */
export class FilterBar {
  readonly element = make('section', 'tool-bar', { hidden: '' })
  readonly #label = make('label', 'tool-label')
  readonly #words = make('input', 'tool-field', { type: 'text', id: 'filter-entries', spellcheck: 'false', autocomplete: 'off' })
  readonly #changed = createButton('', 'plain', () => filterRows(this.session, 'changed'))
  readonly #found = createButton('', 'plain', () => filterRows(this.session, 'findings'))
  readonly #status = make('span', 'tool-status')
  readonly #all = createButton('', 'plain', () => showAll(this.session))
  readonly #close = createButton('×', 'quiet', () => this.#leave())

  constructor(readonly session: Session, readonly back: () => void) {
    this.#label.htmlFor = this.#words.id
    this.#words.addEventListener('input', () => filterEntries(session, this.#words.value))
    this.element.addEventListener('keydown', (event) => {
      if (event.key !== 'Escape' && !(event.key === 'Enter' && event.target === this.#words)) return
      event.preventDefault()
      event.stopPropagation()
      if (event.key === 'Enter') this.back()
      else this.#leave()
    })
    this.element.append(this.#label, this.#words, this.#changed.element, this.#found.element, this.#status, this.#all.element, this.#close.element)
  }

  draw(focus: boolean): void {
    const { model, filterOpen } = this.session
    const { hiding, all } = model
    const isFiltered = hiding.rows !== 'all' || hiding.entries !== ''
    this.element.hidden = all.state === 'empty' || !(filterOpen || isFiltered)
    if (this.element.hidden) return
    setAttribute(this.element, 'aria-label', say('filter.name'))
    this.#label.textContent = say('filter.entries')
    if (document.activeElement !== this.#words) this.#words.value = hiding.entries
    press(this.#changed, say('filter.changed'), hiding.rows === 'changed')
    press(this.#found, say('filter.findings'), hiding.rows === 'findings')
    this.#status.textContent = shownWords(this.session)
    this.#all.label = say('filter.all')
    this.#all.enabled = isFiltered || hiding.folded.size > 0
    setAttribute(this.#words, 'placeholder', say('filter.hint'))
    setAttribute(this.#close.element, 'aria-label', say('filter.close'))
    if (focus) this.#words.select()
  }

  /** What is filtered stays so while it is told; with nothing filtered the bar goes. */
  #leave(): void {
    openFilter(this.session, false)
    this.back()
  }
}

function press(button: ButtonControl, label: string, isOn: boolean): void {
  button.label = label
  setAttribute(button.element, 'aria-pressed', String(isOn))
}
