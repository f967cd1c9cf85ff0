import { wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { exportDerived, type ExportedDerived } from './exportDerived'
import { exportRide, type ExportedRide } from './exportRide'
import { exportSettings, type ExportedSettings } from './exportSettings'

/**
 * A notebook as plain data for scripts: every entry with its state resolved and its numbers worked out. Names carry the
 * units, so that nothing has to be looked up; a number that is not known is left out, never null or zero.
 */
export interface Exported {
  /** Of this shape; a field may be added without another number. */
  version: 1
  machine?: string
  entries: ExportedEntry[]
}

export interface ExportedEntry {
  /** The entry's id where it is unique, else its place as `#3`. */
  id: string
  /** The entry it comes from, whether written or by order; absent for one that comes from none. */
  from?: string
  /** As it is written. */
  date?: string
  settings: ExportedSettings
  derived: ExportedDerived
  ride?: ExportedRide
}

export function exportNotebook(notebook: Notebook): Exported {
  const machine = wordsAt(notebook, ['machine', 'name'])
  return { version: 1, ...(machine === undefined ? {} : { machine }), entries: notebook.entries.map((entry) => exportEntry(notebook, entry)) }
}

function exportEntry(notebook: Notebook, entry: Entry): ExportedEntry {
  const ride = exportRide(entry)
  return {
    id: entry.key, ...(entry.parent ? { from: entry.parent.key } : {}), ...(entry.date ? { date: entry.date.value } : {}),
    settings: exportSettings(notebook, entry), derived: exportDerived(notebook, entry), ...(ride ? { ride } : {}),
  }
}
