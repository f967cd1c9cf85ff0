import type { ChartGroup, ChartsView } from '../../../src/core/charts/view'
import type { FromWebview } from '../../../src/protocol'

/** What of the charts' panel outlives the page. */
export interface SavedCharts {
  open: boolean
  group: ChartGroup
  asTable: boolean
  /** The panel's height as a share of the page's. */
  share: number
}

export const freshCharts: SavedCharts = { open: false, group: 'sag', asTable: false, share: 0.45 }

const groups: readonly ChartGroup[] = ['sag', 'force', 'geometry', 'log']
const [leastShare, mostShare] = [0.2, 0.8]

/** How long the selection rests before charts of another entry are asked for, ms. */
const restMs = 80

export interface ChartsPorts {
  send(message: FromWebview): void
  later(ms: number, action: () => void): void
  /** What is shown differs. `focus`: the keyboard goes into the charts as soon as they are there. */
  changed(change: { kind: 'charts'; focus: boolean }): void
}

/** The state of the charts' panel: which charts are shown and how, and what the host gave for them. */
export class Charts {
  open: boolean
  group: ChartGroup
  asTable: boolean
  share: number
  given: ChartsView | undefined
  /** Whether the keyboard is to go into the charts once they have come. */
  #focus = false
  #asked: string | undefined
  #column: string | undefined
  /** The first and the last of several entries that are selected. */
  #between: readonly string[] = []
  /** The stretch of x that is looked at more closely. */
  #within: readonly [from: number, to: number] | undefined

  constructor(readonly ports: ChartsPorts, saved: SavedCharts = freshCharts) {
    ({ open: this.open, group: this.group, asTable: this.asTable, share: this.share } = saved)
  }

  /** Opens the panel, or another group in it. */
  show(group: ChartGroup = this.group, focus = false): void {
    const isThere = this.open && this.group === group && this.given?.group === group
    if (!isThere) this.#within = undefined
    this.open = true
    this.group = group
    this.#focus = focus && !isThere
    this.ports.changed({ kind: 'charts', focus: focus && isThere })
    if (!isThere) this.#ask()
  }

  close(): void {
    if (!this.open) return
    this.open = false
    this.given = undefined
    this.#asked = undefined
    this.ports.send({ type: 'chartsLeft' })
    this.ports.changed({ kind: 'charts', focus: false })
  }

  showTable(asTable: boolean): void {
    this.asTable = asTable
    this.ports.changed({ kind: 'charts', focus: false })
  }

  resize(share: number): void {
    this.share = Math.min(mostShare, Math.max(leastShare, share))
    this.ports.changed({ kind: 'charts', focus: false })
  }

  /** A stretch is in sight that the host may know in more detail; asked for once nothing else is looked at. */
  lookCloser(within: readonly [from: number, to: number]): void {
    if (String(within) === String(this.#within)) return
    this.#within = within
    this.ports.later(restMs, () => this.open && this.#within === within && this.#ask())
  }

  /** The host gave charts; those of a group that was left since are too late. */
  take(given: ChartsView): void {
    if (!this.open || given.group !== this.group) return
    this.given = given
    const focus = this.#focus
    this.#focus = false
    this.ports.changed({ kind: 'charts', focus })
  }

  /** The page is new to the host, which then knows of no panel. */
  begin(column: string | undefined, between: readonly string[] = []): void {
    this.#column = column
    this.#between = between
    if (this.open) this.#ask()
  }

  /** The entry looked at is another, or has another name, or others are selected with it; asked for where the charts change with it. */
  follow(column: string | undefined, between: readonly string[] = []): void {
    this.#column = column
    this.#between = between
    if (!this.#isBehind()) return
    this.#within = undefined
    this.ports.later(restMs, () => this.#isBehind() && this.#ask())
  }

  toSave(): SavedCharts {
    const { open, group, asTable, share } = this
    return { open, group, asTable, share }
  }

  #isBehind(): boolean {
    return this.open && this.given?.ofEntry !== undefined && this.#column !== undefined && this.#wanted !== this.#asked
  }

  get #wanted(): string {
    return JSON.stringify([this.#column, this.#between.length > 1 ? this.#between : []])
  }

  #ask(): void {
    this.#asked = this.#wanted
    this.ports.send({ type: 'chartsAsked', group: this.group, ...(this.#column === undefined ? {} : { column: this.#column }), ...(this.#between.length > 1 ? { between: [...this.#between] } : {}), ...(this.#within ? { within: [...this.#within] } : {}) })
  }
}

/** Reads what an earlier life of the page left behind. */
export function readSavedCharts(saved: unknown): SavedCharts {
  if (typeof saved !== 'object' || saved === null) return freshCharts
  const { open, group, asTable, share } = saved as Record<string, unknown>
  return {
    open: open === true, asTable: asTable === true, group: groups.find((each) => each === group) ?? freshCharts.group,
    share: typeof share === 'number' && share >= leastShare && share <= mostShare ? share : freshCharts.share,
  }
}
