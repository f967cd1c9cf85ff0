import { make, setAttribute } from '../../page/dom'
import { isReadable, sideName, sideNames } from '../model/describe'
import { readTableKey } from '../model/keys'
import { columns, type ColumnName, type Line } from '../model/lines'
import type { Session } from '../model/session'
import { filled } from '../model/walk'
import { say } from '../strings'
import { makeLine, type LineElements } from './cells'

/**
 * The table: one for both sides, so that it scrolls as one. A line keeps its element as long as it says the same, so
 * that a change redraws no more than itself.
 */
export class Table {
  readonly scroller = make('div', 'scroller')
  readonly #hint = make('p', 'unseen', { id: 'grid-hint' })
  readonly #grid = make('div', 'grid', { role: 'grid', 'aria-readonly': 'true', 'aria-describedby': 'grid-hint' })
  readonly #nothing = make('p', 'nothing-shown')
  #drawn = new Map<string, LineElements & { text: string }>()
  #current: HTMLElement | undefined

  constructor(readonly session: Session) {
    this.scroller.append(this.#hint, this.#grid, this.#nothing)
    this.#grid.addEventListener('keydown', (event) => this.#key(event))
    this.#grid.addEventListener('click', (event) => this.#point(event))
    this.#grid.addEventListener('dblclick', (event) => this.#point(event) && session.open())
  }

  draw(): void {
    const { view, lines } = this.session
    if (!view) return
    const sides = columns.filter((column) => column === 'label' || (column === 'change' ? bothReadable(this.session) : isReadable(view.comparison[column])))
    const hadFocus = this.#grid.contains(document.activeElement)
    this.#hint.textContent = say('grid.hint')
    setAttribute(this.#grid, 'aria-label', say('grid.name', sideName(view, 'left'), sideName(view, 'right')))
    setAttribute(this.#grid, 'aria-colcount', String(columns.length))
    setAttribute(this.#grid, 'aria-rowcount', String(lines.length + 1))
    this.scroller.classList.toggle('is-alone', sides.length === 2)
    this.#grid.replaceChildren(this.#head(sides), ...this.#rows(lines, sides))
    this.#grid.hidden = lines.length === 0
    this.#nothing.hidden = lines.length > 0
    this.#nothing.textContent = say(this.session.hidden > 0 ? 'grid.none' : 'grid.empty')
    this.follow(hadFocus)
  }

  /** Makes the session's cell the one that Tab leads to; with `focus` puts the keyboard there. */
  follow(focus: boolean): void {
    const { active, activeLine } = this.session
    const elements = active && this.#drawn.get(active.line)
    // A side that cannot be read has no cells.
    const cell = active && activeLine && (elements?.cells.get(filled(activeLine, active.column)) ?? elements?.cells.get('label'))
    this.#current?.setAttribute('tabindex', '-1')
    this.#current?.removeAttribute('aria-describedby')
    this.#current = cell
    cell?.setAttribute('tabindex', '0')
    cell?.setAttribute('aria-describedby', 'strip')
    if (focus) cell?.focus()
  }

  /** How many lines fit on a page, about. */
  get pageSize(): number {
    return Math.max(1, Math.floor(this.scroller.clientHeight / 32) - 2)
  }

  #head(sides: readonly ColumnName[]): HTMLElement {
    const { view } = this.session
    const text = (column: ColumnName) => (column === 'label' ? say('grid.corner') : column === 'change' ? say('grid.change') : sideName(view!, column))
    const cells = sides.map((column) => make('div', `cell cell-${column}`, { role: 'columnheader', 'aria-colindex': String(columns.indexOf(column) + 1) }, text(column)))
    return make('div', 'row row-head', { role: 'row', 'aria-rowindex': '1' }, ...cells)
  }

  #rows(lines: readonly Line[], sides: readonly ColumnName[]): HTMLElement[] {
    const before = this.#drawn
    this.#drawn = new Map()
    return lines.map((line, index) => {
      const text = JSON.stringify([line, sides])
      const known = before.get(line.key)
      const elements = known?.text === text ? known : { ...makeLine(line, sides), text }
      this.#drawn.set(line.key, elements)
      elements.row.dataset.line = line.key
      setAttribute(elements.row, 'aria-rowindex', String(index + 2))
      return elements.row
    })
  }

  #key(event: KeyboardEvent): void {
    const key = event.isComposing ? undefined : readTableKey(event)
    if (!key || !this.session.do(key, this.pageSize)) return
    event.preventDefault()
    event.stopPropagation()
    if (key.kind === 'move') this.follow(true)
  }

  /** Makes the cell that was pointed at the current one. A heading is none. */
  #point({ target }: MouseEvent): boolean {
    const cell = target instanceof Element ? target.closest<HTMLElement>('.cell') : null
    const line = cell?.closest<HTMLElement>('.row')?.dataset.line
    const column = columns.find((each) => each === cell?.dataset.column)
    if (line === undefined || column === undefined || this.session.lines.find(({ key }) => key === line)?.kind === 'group') return false
    this.session.select({ line, column })
    this.follow(document.getSelection()?.isCollapsed !== false)
    return true
  }
}

function bothReadable({ view }: Session): boolean {
  return sideNames.every((side) => isReadable(view!.comparison[side]))
}
