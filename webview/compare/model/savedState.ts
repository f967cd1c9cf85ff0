import type { SideName, StateSource } from '../../../src/protocol'
import { columns, type ColumnName } from './lines'
import type { Spot } from './walk'

/** What outlives the page while its tab is hidden, or the window is loaded anew. The host reads `sources`. */
export interface SavedState {
  sources?: Record<SideName, StateSource>
  active?: Spot
  /** How far the table was scrolled, px. */
  scrollTop: number
}

/** Reads what an earlier life of the page, perhaps of an older version, left behind. Anything odd is left out. */
export function readSavedState(saved: unknown): SavedState {
  if (!isRecord(saved)) return { scrollTop: 0 }
  const { active, scrollTop } = saved
  const spot = isRecord(active) && typeof active.line === 'string' ? { line: active.line, column: readColumn(active.column) } : undefined
  return { scrollTop: typeof scrollTop === 'number' && scrollTop > 0 && Number.isFinite(scrollTop) ? scrollTop : 0, ...(spot ? { active: spot } : {}) }
}

const readColumn = (value: unknown): ColumnName => columns.find((each) => each === value) ?? 'label'

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value)
