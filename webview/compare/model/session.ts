import type { CompareView, FromCompare, SideName, ToCompare } from '../../../src/protocol'
import { say } from '../strings'
import { buildLines } from './buildLines'
import { counted, sideName, sideNames, summaryOf } from './describe'
import type { CompareKey } from './keys'
import type { Line, Value } from './lines'
import type { SavedState } from './savedState'
import { filled, settle, walk, type Spot } from './walk'

/** The world outside the page's state; handed in, so that all of it runs without a page. */
export interface Ports {
  send(message: FromCompare): void
  announce(text: string): void
  /** `view`: everything may have changed. `active`: another cell is the current one. */
  changed(what: 'view' | 'active'): void
}

/** The state of one open comparison: what the host told, where a person stands. It knows no DOM. */
export class Session {
  view: CompareView | undefined
  lines: Line[] = []
  active: Spot | undefined
  onlyDifferences = false

  constructor(readonly ports: Ports, saved: SavedState) {
    this.active = saved.active
  }

  receive({ view }: ToCompare): void {
    const before = this.view
    this.view = view
    this.onlyDifferences = view.onlyDifferences
    this.#rebuild()
    if (before) this.#tell(before, view)
  }

  /** Does what a key or a button asks. False where that cannot be done just now. */
  do(key: CompareKey, pageSize = 10): boolean {
    switch (key.kind) {
      case 'move': return this.#move(walk(this.lines, this.active ?? { line: '', column: 'label' }, key.move, pageSize))
      case 'open': return this.open()
      case 'swap': return this.#send({ type: 'sidesSwapped' })
      case 'step': return this.#step(key.newer)
      case 'choose': return this.#send({ type: 'sideAsked', side: key.side })
      case 'filter': return this.filter(!this.onlyDifferences)
      case 'turns': return this.view?.turnList === true && this.#send({ type: 'turnListAsked' })
    }
  }

  /** Makes a cell the current one. */
  select(spot: Spot): void {
    this.active = spot
    this.ports.changed('active')
  }

  /** Hides the rows that are alike, or shows them again. */
  filter(onlyDifferences: boolean): true {
    this.onlyDifferences = onlyDifferences
    this.#rebuild()
    this.ports.send({ type: 'filterSet', onlyDifferences })
    const rows = counted('sum.rows', this.lines.filter(({ kind }) => kind !== 'group').length)
    this.ports.announce(say(onlyDifferences ? 'sum.filtered' : 'sum.unfiltered', rows))
    return true
  }

  /** Shows the current cell in its grid. A label or a change is the right side's, where that has one. */
  open(): boolean {
    const line = this.activeLine
    if (!line || !this.active) return false
    const column = filled(line, this.active.column)
    const sides: readonly SideName[] = column === 'left' ? ['left'] : column === 'right' ? ['right'] : ['right', 'left']
    for (const side of sides) {
      const message = opens(line[side], side)
      if (message) return this.#send(message)
    }
    return false
  }

  get activeLine(): Line | undefined {
    return this.lines.find(({ key }) => key === this.active?.line)
  }

  /** How many rows are hidden for being alike. */
  get hidden(): number {
    if (!this.view || !this.onlyDifferences) return 0
    const count = (lines: readonly Line[]) => lines.filter(({ kind }) => kind !== 'group').length
    return count(buildLines(this.view, false)) - count(this.lines)
  }

  #rebuild(): void {
    if (!this.view) return
    this.lines = buildLines(this.view, this.onlyDifferences)
    this.active = settle(this.lines, this.active)
    this.ports.changed('view')
  }

  #move(spot: Spot | undefined): boolean {
    if (spot) this.select(spot)
    return spot !== undefined
  }

  #step(newer: boolean): boolean {
    if (!this.view) return false
    const pair = newer ? this.view.newer : this.view.older
    if (pair !== undefined) return this.#send({ type: 'stepped', newer })
    this.ports.announce(say(newer ? 'bar.newer.none' : 'bar.older.none'))
    return true
  }

  #send(message: FromCompare): true {
    this.ports.send(message)
    return true
  }

  /** Another pair is told by its names and what differs; a change within it by what differs now. */
  #tell(before: CompareView, now: CompareView): void {
    const pair = (view: CompareView) => say('sum.pair', ...sideNames.map((side) => sideName(view, side)))
    const [was, is] = [summaryOf(before), summaryOf(now)]
    if (pair(before) !== pair(now)) this.ports.announce(`${pair(now)}: ${is}`)
    else if (was !== is) this.ports.announce(is)
  }
}

function opens({ place, line }: Value, side: SideName): FromCompare | undefined {
  if (place) return { type: 'placeOpened', side, place }
  return line === undefined ? undefined : { type: 'lineOpened', side, line }
}
