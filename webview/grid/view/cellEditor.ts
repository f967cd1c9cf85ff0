import { say } from '../strings'
import { spotName } from '../model/describe'
import { readEditKey } from '../model/keys'
import type { Session } from '../model/session'
import { goOn } from '../model/walk'
import { commitToAll } from '../model/reshape'
import { cancelEdit, commitEdit, draft } from '../model/write'
import { ChoiceList } from './choiceList'
import { make } from './dom'
import type { GridBody } from './gridBody'
import type { Box } from './places'

/** The share of the sight that an input for prose grows to before it scrolls. */
const tallest = 0.7

/** The least width of an input for prose, in px: a cell is too narrow to read what one writes. */
const proseWidth = 420

/** The input over the cell that is being edited. It floats over the grid, since the cell beneath may be recycled. */
export class CellEditor {
  #input: HTMLInputElement | HTMLTextAreaElement | undefined
  #choices: ChoiceList | undefined

  constructor(readonly session: Session, readonly body: GridBody) {}

  get isOpen(): boolean {
    return this.#input !== undefined
  }

  /** Opens, moves or closes the input as the session says. */
  follow(): void {
    const { editing, model } = this.session
    const spot = editing && model.spotOf(editing)
    if (!editing || !spot) return this.#close()
    if (!this.#input) this.#open()
    this.#place(this.body.boxOf(spot), this.body.sight(spot))
  }

  #open(): void {
    const { session } = this
    const editing = session.editing!
    const spot = session.model.spotOf(editing)!
    const row = session.model.row(spot.row)!
    const input = row.prose ? make('textarea', 'editor prose', { rows: '1' }) : make('input', `editor${row.figures ? ' figures' : ''}`, { type: 'text' })
    input.setAttribute('aria-label', say('edit.name', ...nameParts(session)))
    input.setAttribute('spellcheck', String(row.prose))
    input.autocomplete = 'off'
    input.value = editing.text
    input.addEventListener('input', () => this.#typed())
    input.addEventListener('keydown', (event) => this.#key(event as KeyboardEvent))
    input.addEventListener('blur', () => this.#input === input && commitEdit(session))
    this.#input = input
    this.body.overlay.append(input)
    if (row.choices) this.#choices = new ChoiceList(input, row.choices, say('edit.choices', spotName(session.model, spot)), () => this.#commit('down'))
    input.focus({ preventScroll: true })
    if (editing.caret === 'all') input.select()
    else input.setSelectionRange(input.value.length, input.value.length)
    this.#choices?.show(this.body.overlay, editing.how === 'edit' ? '' : input.value)
  }

  #close(): void {
    const input = this.#input
    if (!input) return
    const hadFocus = document.activeElement === input
    this.#input = undefined
    this.#choices?.hide()
    this.#choices = undefined
    input.remove()
    if (hadFocus) this.body.grid.focus({ preventScroll: true })
  }

  #typed(): void {
    draft(this.session, this.#input!.value)
    this.#choices?.narrow(this.#input!.value)
    this.follow()
  }

  #key(event: KeyboardEvent): void {
    if (event.isComposing) return
    if (this.#choices?.key(event)) return
    const key = readEditKey(event, this.session.editing?.how ?? 'edit')
    if (!key) return
    event.preventDefault()
    event.stopPropagation()
    if (key.kind === 'cancel') return cancelEdit(this.session)
    if (key.kind === 'commitAll') return this.#commitAll()
    if (key.kind === 'commit') return this.#commit(key.go)
    // Through the browser, so that its own undo knows of it.
    if (this.#input instanceof HTMLTextAreaElement) document.execCommand('insertText', false, '\n')
  }

  #commitAll(): void {
    const chosen = this.#choices?.chosen
    if (chosen !== undefined && chosen !== this.#input!.value) draft(this.session, chosen)
    commitToAll(this.session)
  }

  #commit(go: 'down' | 'up' | 'right' | 'left'): void {
    const chosen = this.#choices?.chosen
    if (chosen !== undefined && chosen !== this.#input!.value) draft(this.session, chosen)
    commitEdit(this.session)
    goOn(this.session, go)
  }

  /** Over its cell, grown to what is typed as far as the sight allows, and moved back into it where it would not fit. */
  #place(box: Box, sight: Box): void {
    const input = this.#input!
    const { style } = input
    Object.assign(style, { width: `${box.width}px`, height: `${box.height}px` })
    const width = Math.max(box.width, Math.min(input.scrollWidth + 2, sight.width * 0.6))
    style.width = `${input instanceof HTMLTextAreaElement ? Math.max(width, Math.min(proseWidth, sight.width)) : width}px`
    style.height = `${Math.max(box.height, Math.min(sight.height * tallest, input.scrollHeight + 2))}px`
    style.left = `${Math.max(sight.left, Math.min(box.left, sight.left + sight.width - input.offsetWidth))}px`
    style.top = `${Math.max(sight.top, Math.min(box.top, sight.top + sight.height - input.offsetHeight))}px`
    this.#choices?.place(box, sight)
  }
}

function nameParts({ model, editing }: Session): string[] {
  const spot = model.spotOf(editing!)!
  return [spotName(model, { row: spot.row, column: -1 }), spotName(model, { row: -1, column: spot.column })]
}
