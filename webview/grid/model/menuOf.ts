import type { GridModel } from './gridModel'
import { HEADER, LABELS, type Spot } from './spot'

/** What the editor's menus are told of the current spot; the manifest asks for `webviewSection`. */
export interface MenuAbout {
  webviewSection: 'entry' | 'position' | 'cell' | 'adjuster' | 'row'
  column?: string
}

/** What a menu opened on a spot is about. */
export function menuOf(model: GridModel, { row, column }: Spot): MenuAbout {
  const key = model.column(column)?.key
  const entry = key === undefined ? {} : { column: key }
  const isSetting = model.row(row)?.kind === 'setting'
  if (column === LABELS) return { webviewSection: isSetting ? 'adjuster' : 'row' }
  if (row === HEADER) return { webviewSection: 'entry', ...entry }
  return { webviewSection: isSetting ? 'position' : 'cell', ...entry }
}
