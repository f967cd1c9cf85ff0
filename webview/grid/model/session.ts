import type { Gesture } from '../../../src/core/grid/gesture'
import type { GridFinding, GridPlace } from '../../../src/core/grid/view'
import type { FromWebview } from '../../../src/protocol'
import { Charts } from './charts'
import type { Editing } from './editing'
import type { Sought } from './find'
import { GridModel, type Touched } from './gridModel'
import { Outbox, type Answer } from './outbox'
import { PendingTexts } from './pending'
import { freshState, type KeyedSpot, type OpenForm, type SavedState } from './savedState'
import { blockOf, extended, isRange, only, spotsOf, type Selection } from './selection'
import { HEADER, isCell, LABELS, nearestSpot, sameSpot, type Spot } from './spot'

/** What changed, for whoever draws. */
export type Change =
  | { kind: 'view' }
  | { kind: 'cells'; touched: Touched }
  /** `reveal`: scroll it into sight. */
  | { kind: 'selection'; reveal: Reveal }
  | { kind: 'editing' }
  | { kind: 'pending'; places: readonly GridPlace[] }
  | { kind: 'silence' }
  | { kind: 'notice' }
  | { kind: 'panels' }
  /** `focus`: the keyboard goes into the charts. */
  | { kind: 'charts'; focus: boolean }
  /** `focus`: the keyboard goes into its field. */
  | { kind: 'filter' | 'find'; focus: boolean }
  /** `values`: what an earlier life of the page left in its fields. */
  | { kind: 'form'; form: FormName; values?: Record<string, string> }
  /** The form that accepts a finding is to be opened again. */
  | { kind: 'accept'; finding: GridFinding; values: Record<string, string> }
  /** A person is to be asked before it is done. */
  | { kind: 'confirm'; title: string; about: string; submit: string; gesture: Gesture }
  /** Open forms are to send what they hold, before a save. */
  | { kind: 'flush' }
  /** The card of the current cell is to be opened. */
  | { kind: 'card' }
  /** The next step after the current entry is to be told. */
  | { kind: 'advice' }
  /** The grid is to have the focus, or to give it up to the bar above. */
  | { kind: 'focus' | 'leave' }

/** Scroll it into sight, with the heading above it or without: under a pointer that is down nothing is to move further than it must. */
export type Reveal = 'withHeading' | 'alone' | 'no'

export type FormName = 'entry' | 'header' | 'remark'

/** `polite` waits its turn, `urgent` does not, `shown` is shown beside the current cell as well: why a key did nothing. */
export type Manner = 'polite' | 'urgent' | 'shown'

/** The world outside the page's state; handed in, so that all of it runs without a page and without a clock. */
export interface Ports {
  send(message: FromWebview): void
  later(ms: number, action: () => void): void
  announce(text: string, manner: Manner): void
  changed(change: Change): void
}

/**
 * The state of one open grid: what the host told, where a person stands, what they typed. The functions in
 * `receive`, `walk` and `write` change it; the folder `view` draws it. It knows no DOM.
 */
export class Session {
  readonly model = new GridModel()
  readonly pending = new PendingTexts()
  readonly outbox: Outbox
  readonly charts: Charts
  /** Whether the host has told anything yet. */
  shown = false
  selection: Selection = only({ row: HEADER, column: LABELS })
  editing: Editing | undefined
  /** The form that is being filled in, once something was typed there. */
  form: OpenForm | undefined
  /** It could not be opened again: the notice tells what was in it, until that is let go of. */
  formAsNotice = false
  /** Where a run of Tabs began, by column. */
  runColumn: number | undefined
  /** A place to go to as soon as the view has it. */
  wanted: { place: GridPlace; edit: boolean } | undefined
  /** The current cell is to be spoken as soon as it is shown anew. */
  tellCell = false
  /** A refusal or a loss that belongs to no cell. */
  notice: string | undefined
  findingsOpen: boolean
  filterOpen = false
  /** Widths of entries' columns in px, by key, where they are not the usual one. */
  readonly widths: Map<string, number>
  /** The column of labels: its width in px as a person has drawn it, and as it is. */
  readonly labels: { drawn?: number | undefined; shown: number } = { shown: 0 }
  find: Sought = { open: false, text: '', replacement: '' }
  cautionsOpen: boolean

  constructor(readonly ports: Ports, readonly saved: SavedState = freshState) {
    this.findingsOpen = saved.findingsOpen
    this.cautionsOpen = saved.cautionsOpen
    this.form = saved.form
    this.widths = new Map(Object.entries(saved.widths ?? {}))
    this.labels.drawn = saved.labels
    if (saved.hiding) this.model.hide(saved.hiding)
    this.charts = new Charts(ports, saved.charts)
    this.outbox = new Outbox({ ...ports, silenceChanged: () => ports.changed({ kind: 'silence' }) })
  }

  get active(): Spot {
    return this.selection.active
  }

  /** The current cell, where it is one. */
  get activePlace(): GridPlace | undefined {
    return this.model.placeOf(this.active)
  }

  pendingAt(spot: Spot) {
    return this.pending.at(this.model.placeOf(spot))
  }

  /** Makes a spot the current one; with `extend` draws the range on to it. */
  select(spot: Spot, { extend = false, reveal = 'withHeading' as Reveal, keepRun = false } = {}): void {
    const before = this.selection
    this.selection = extend ? extended(this.selection, spot) : only(spot)
    if (!keepRun) this.runColumn = undefined
    this.ports.changed({ kind: 'selection', reveal })
    if (!sameSpot(before.active, this.active) || !sameSpot(before.anchor, this.selection.anchor)) this.tellSelection()
    this.charts.follow(this.keyed(this.active).column, this.selectedColumns)
  }

  /** Makes a range of cells the selection. It may be larger than the page, so that nothing scrolls. */
  selectRange(selection: Selection): void {
    this.selection = selection
    this.ports.changed({ kind: 'selection', reveal: 'no' })
    this.tellSelection()
    this.charts.follow(this.keyed(this.active).column, this.selectedColumns)
  }

  /** The entries that the selection begins and ends in, from left to right. */
  get selectedColumns(): string[] {
    const { left, right } = blockOf(this.selection)
    return [...new Set([left, right])].flatMap((column) => this.model.column(column)?.key ?? [])
  }

  tellSelection(): void {
    this.ports.send({ type: 'selectionChanged', place: this.activePlace ?? null, columns: this.selectedColumns, range: isRange(this.selection), cells: spotsOf(this.model.ground, this.selection).length })
  }

  /** Sends a gesture of a form or a button. */
  ask(gesture: Gesture): Promise<Answer> {
    return new Promise((resolve) => this.outbox.send(gesture, resolve))
  }

  note(text: string | undefined): void {
    if (this.formAsNotice) this.form = undefined
    this.formAsNotice = false
    this.notice = text
    if (text) this.ports.announce(text, 'urgent')
    this.ports.changed({ kind: 'notice' })
  }

  show(panel: 'findings' | 'cautions', open: boolean): void {
    if (panel === 'findings') this.findingsOpen = open
    else this.cautionsOpen = open
    this.ports.changed({ kind: 'panels' })
  }

  /** The selection by keys, to find it again in another view. */
  keyed(spot: Spot): KeyedSpot {
    const row = this.model.row(spot.row)
    const column = this.model.column(spot.column)
    return { ...(row && { row: row.key }), ...(column && { column: column.key }) }
  }

  /** Where to stand at first: on the newest entry's first setting. */
  firstSpot(): Spot {
    const { ground } = this.model
    const column = ground.columns === 0 ? LABELS : ground.columns - 1
    return nearestSpot(ground, { row: 0, column }) ?? { row: HEADER, column: LABELS }
  }

  /** What is to outlive the page. The scroll is the drawing's to add. */
  toSave(): Omit<SavedState, 'scroll'> {
    const { editing } = this
    return {
      active: this.keyed(this.selection.active),
      anchor: this.keyed(this.selection.anchor),
      findingsOpen: this.findingsOpen,
      cautionsOpen: this.cautionsOpen,
      charts: this.charts.toSave(),
      hiding: this.model.hiding,
      widths: Object.fromEntries(this.widths),
      ...(this.labels.drawn !== undefined && { labels: this.labels.drawn }),
      ...(editing?.touched && { open: { row: editing.row, column: editing.column, text: editing.text, how: editing.how } }),
      ...(this.form && { form: this.form }),
      unwritten: this.pending.unwritten.map(({ row, column, text }) => ({ row, column, text })),
    }
  }

  /** Whether the current spot is a cell of an entry. */
  get onCell(): boolean {
    return isCell(this.active) && this.activePlace !== undefined
  }
}
