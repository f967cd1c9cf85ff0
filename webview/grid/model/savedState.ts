import type { GridPlace } from '../../../src/core/grid/view'
import type { Hiding } from './hiding'
import { readWidths } from './widths'
import { readSavedCharts, type SavedCharts } from './charts'

/** What outlives the page while its tab is hidden. Everything by key; a missing key means the header or a label. */
export interface SavedState {
  active?: KeyedSpot
  anchor?: KeyedSpot
  scroll?: KeyedScroll
  findingsOpen: boolean
  cautionsOpen: boolean
  charts?: SavedCharts
  hiding?: Hiding
  /** By the entry's key. */
  widths?: Record<string, number>
  /** The cell being edited and what was typed so far. */
  open?: OpenCell
  /** Texts sent without an answer, and refused ones. */
  unwritten: ({ text: string } & GridPlace)[]
}

export interface KeyedSpot {
  row?: string
  column?: string
}

/** The first row and column in sight and how far, in px, each is scrolled past its start. */
export interface KeyedScroll {
  row?: string
  rowPx: number
  column?: string
  columnPx: number
}

export interface OpenCell extends GridPlace {
  text: string
  how: 'replace' | 'edit'
}

export const freshState: SavedState = { findingsOpen: false, cautionsOpen: false, unwritten: [] }

/** Reads what an earlier life of the page, perhaps of an older version, left behind. Anything odd is left out. */
export function readSavedState(saved: unknown): SavedState {
  if (!isRecord(saved)) return freshState
  const state: SavedState = { findingsOpen: saved.findingsOpen === true, cautionsOpen: saved.cautionsOpen === true, unwritten: [] }
  if (saved.charts !== undefined) state.charts = readSavedCharts(saved.charts)
  if (saved.widths !== undefined) state.widths = readWidths(saved.widths)
  if (isRecord(saved.hiding)) state.hiding = readHiding(saved.hiding)
  if (isRecord(saved.active)) state.active = readSpot(saved.active)
  if (isRecord(saved.anchor)) state.anchor = readSpot(saved.anchor)
  if (isRecord(saved.scroll)) {
    state.scroll = { ...readSpot(saved.scroll), rowPx: readNumber(saved.scroll.rowPx), columnPx: readNumber(saved.scroll.columnPx) }
  }
  const open = readText(saved.open)
  if (open && isRecord(saved.open)) state.open = { ...open, how: saved.open.how === 'replace' ? 'replace' : 'edit' }
  if (Array.isArray(saved.unwritten)) state.unwritten = saved.unwritten.flatMap((each) => readText(each) ?? [])
  return state
}

/** A set outlives the page as a list. */
function readHiding({ folded, rows, entries, pinned, pinnedRows }: Record<string, unknown>): Hiding {
  return {
    folded: new Set(readKeys(folded instanceof Set ? [...folded] : folded)),
    rows: rows === 'changed' || rows === 'findings' ? rows : 'all', entries: typeof entries === 'string' ? entries : '',
    pinned: readKeys(pinned), pinnedRows: readKeys(pinnedRows),
  }
}

const readKeys = (keys: unknown): string[] => (Array.isArray(keys) ? keys.filter((key): key is string => typeof key === 'string') : [])

function readText(value: unknown): ({ text: string } & GridPlace) | undefined {
  if (!isRecord(value)) return undefined
  const { row, column, text } = value
  return typeof row === 'string' && typeof column === 'string' && typeof text === 'string' ? { row, column, text } : undefined
}

function readSpot({ row, column }: Record<string, unknown>): KeyedSpot {
  return { ...(typeof row === 'string' && { row }), ...(typeof column === 'string' && { column }) }
}

const readNumber = (value: unknown) => (typeof value === 'number' && Number.isFinite(value) ? value : 0)

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value)
