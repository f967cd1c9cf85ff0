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
  /** The width of the column of labels, where a person has drawn it. */
  labels?: number
  /** The cell being edited and what was typed so far. */
  open?: OpenCell
  /** Texts sent without an answer, and refused ones. */
  unwritten: ({ text: string } & GridPlace)[]
  /** The form that is being filled in, once something was typed there. */
  form?: OpenForm
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

/** A form by what it is about, with what is in its fields. `finding` is what it says, for the form that accepts one. */
export interface OpenForm extends KeyedSpot {
  form: 'entry' | 'header' | 'remark' | 'accept'
  finding?: string
  values: Record<string, string>
}

export const freshState: SavedState = { findingsOpen: false, cautionsOpen: false, unwritten: [] }

/** Reads what an earlier life of the page, perhaps of an older version, left behind. Anything odd is left out. */
export function readSavedState(saved: unknown): SavedState {
  if (!isRecord(saved)) return freshState
  const state: SavedState = { findingsOpen: saved.findingsOpen === true, cautionsOpen: saved.cautionsOpen === true, unwritten: [] }
  if (saved.charts !== undefined) state.charts = readSavedCharts(saved.charts)
  if (saved.widths !== undefined) state.widths = readWidths(saved.widths)
  if (typeof saved.labels === 'number' && saved.labels > 0) state.labels = saved.labels
  if (isRecord(saved.hiding)) state.hiding = readHiding(saved.hiding)
  if (isRecord(saved.active)) state.active = readSpot(saved.active)
  if (isRecord(saved.anchor)) state.anchor = readSpot(saved.anchor)
  if (isRecord(saved.scroll)) {
    state.scroll = { ...readSpot(saved.scroll), rowPx: readNumber(saved.scroll.rowPx), columnPx: readNumber(saved.scroll.columnPx) }
  }
  const open = readText(saved.open)
  if (open && isRecord(saved.open)) state.open = { ...open, how: saved.open.how === 'replace' ? 'replace' : 'edit' }
  if (Array.isArray(saved.unwritten)) state.unwritten = saved.unwritten.flatMap((each) => readText(each) ?? [])
  const form = readForm(saved.form)
  if (form) state.form = form
  return state
}

/** What a state holds that someone typed and that may stand nowhere else, as one text; empty where there is nothing. */
export function typedIn(saved: unknown): string {
  const { open, unwritten, form } = readSavedState(saved)
  return open || form || unwritten.length > 0 ? JSON.stringify([open, unwritten, form]) : ''
}

function readForm(saved: unknown): OpenForm | undefined {
  if (!isRecord(saved) || !isRecord(saved.values)) return undefined
  const form = (['entry', 'header', 'remark', 'accept'] as const).find((name) => name === saved.form)
  const values = Object.fromEntries(Object.entries(saved.values).filter((each): each is [string, string] => typeof each[1] === 'string'))
  return form && { form, ...readSpot(saved), ...(typeof saved.finding === 'string' && { finding: saved.finding }), values }
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
