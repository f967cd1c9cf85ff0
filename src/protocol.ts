import type { Card } from './core/card/card'
import type { ChartGroup, ChartsView } from './core/charts/view'
import type { Comparison } from './core/compare/comparison'
import type { TurnList } from './core/compare/turns'
import type { Cell, Column, GridFinding, GridPlace, GridView, Trouble } from './core/grid/view'
import type { LeftOut } from './core/grid/applyGesture'
import type { Gesture } from './core/grid/gesture'
import type { PackedView } from './core/grid/packView'

/**
 * The messages between the editor and a grid's webview. The webview says `ready` first and is told everything in
 * reply; from then on it reports gestures and is told what changed. Types are strings, so that a log can be read.
 */
export type ToWebview =
  | { type: 'gridShown'; version: number; view: PackedView }
  /** Only what differs from what was shown at `version - 1` steps before; rows and their order are the same. */
  | { type: 'gridChanged'; version: number; patch: GridPatch }
  /** The answer to a gesture: done, with the cells that were left out, or refused and why. */
  | { type: 'gestureAnswered'; id: number; refused?: string; reveal?: GridPlace; left?: LeftOut[] }
  | { type: 'placeRevealed'; place: GridPlace; edit?: boolean }
  /** Before a save: whatever is being typed is to be sent as a gesture, then `pendingSent`. */
  | { type: 'pendingAsked'; id: number }
  /** The card or the advice asked for, with its drawing as SVG; neither where there is none. */
  | { type: 'cardGiven'; id: number; card?: Card; drawing?: string }
  /** The charts asked for, and again whenever they have changed, until `chartsLeft`. */
  | { type: 'chartsGiven'; charts: ChartsView }
  /** A command from the palette or a key binding that acts on the selected cell. */
  | { type: 'commandGiven'; command: GridCommand }

export type GridCommand = 'addEntry' | 'annotate' | 'editHeader' | 'nextFinding' | 'previousFinding' | 'showFindings' | 'clearCell' | 'showCard' | 'whatNext' | 'showCharts'
  | 'nudgeMore' | 'nudgeLess' | 'setBothLegs' | 'fillRight' | 'fillDown'
  | 'find' | 'findNext' | 'findPrevious' | 'filter' | 'changedOnly' | 'withFindingsOnly' | 'showAll' | 'toggleGroup'
  | 'widenColumn' | 'narrowColumn' | 'pinEntry' | 'pinRow'
  | 'selectRow' | 'selectColumn' | 'selectAll'
  | 'duplicateEntry' | 'insertEntry' | 'removeEntry' | 'moveEntryLeft' | 'moveEntryRight' | 'removeAdjuster' | 'moveAdjusterUp' | 'moveAdjusterDown' | 'duplicateAdjuster'

export type FromWebview =
  | { type: 'ready' }
  | { type: 'gesture'; id: number; gesture: Gesture }
  | { type: 'pendingSent'; id: number }
  /** The card of a row, in an entry where one is named. */
  | { type: 'cardAsked'; id: number; row: string; column?: string }
  /** The one next step after an entry, as a card. */
  | { type: 'adviceAsked'; id: number; column: string }
  /** The charts of a group are shown from now on, `column` being the entry looked at, `between` the first and the last of several that are selected, `within` a stretch along x to be looked at more closely. */
  | { type: 'chartsAsked'; group: ChartGroup; column?: string; between?: string[]; within?: [from: number, to: number] }
  /** Charts are shown no longer. */
  | { type: 'chartsLeft' }
  /** Open the text at this place, or at the trouble's line. */
  | { type: 'openText'; place?: GridPlace; line?: number }
  /** `columns`: the entries that the selection begins and ends in from left to right, which may be one; `range`: whether it is several cells, and `cells` how many. */
  | { type: 'selectionChanged'; place: GridPlace | null; columns: string[]; range: boolean; cells: number }

/** What differs between two views of one notebook whose rows and columns are the same in number, order and key. */
export interface GridPatch {
  title: string
  state: GridView['state']
  readOnly?: string
  trouble?: Trouble
  /** Columns that differ, by index. */
  columns: [index: number, column: Column][]
  /** Cells that differ, by row and column index. */
  cells: [row: number, column: number, cell: Cell][]
  /** Findings that came or differ, and the ids of those that went. */
  findings?: { put: GridFinding[]; gone: number[] }
}

/** A state of a machine, by where it is found: a notebook as it is in the editor, as it is on disk or at a revision of git. */
export interface StateSource {
  uri: string
  /** An entry's key; the last one where none is named. */
  entry?: string
  /** A revision of git; empty for what is staged. */
  revision?: string
  /** As it was last saved, whatever was typed since. */
  saved?: true
}

export type SideName = 'left' | 'right'

/** A comparison and what can be done with it from here. */
export interface CompareView {
  comparison: Comparison
  sources: Record<SideName, StateSource>
  /** The pair that a step leads to, in words; absent where there is none. */
  older?: string
  newer?: string
  onlyDifferences: boolean
  /** Whether a list of the turns from left to right can be asked for. */
  turnList: boolean
}

/** The messages between the editor and the webview of a comparison, which says `ready` first. */
export type ToCompare = { type: 'comparisonShown'; view: CompareView }

export type FromCompare =
  | { type: 'ready' }
  | { type: 'sidesSwapped' }
  | { type: 'stepped'; newer: boolean }
  /** Another state is to be chosen for a side. */
  | { type: 'sideAsked'; side: SideName }
  | { type: 'filterSet'; onlyDifferences: boolean }
  /** A cell is to be shown in its side's grid. */
  | { type: 'placeOpened'; side: SideName; place: GridPlace }
  /** A line of a side's text is to be shown. */
  | { type: 'lineOpened'; side: SideName; line: number }
  | { type: 'turnListAsked' }

/** A turn list as its page shows it. */
export interface TurnsView {
  list: TurnList
  /** The drawing of each turn that has one, as SVG, by its row. */
  drawings: Record<string, string>
  /** Kept by the page, so that its list can be made anew when the window was loaded again. */
  sources: { from: StateSource; to: StateSource }
}

/** The messages between the editor and the webview of a turn list, which says `ready` first and keeps its ticks itself. */
export type ToTurns = { type: 'turnsShown'; view: TurnsView }

export type FromTurns = { type: 'ready' } | { type: 'copyAsked' } | { type: 'saveAsked' }
