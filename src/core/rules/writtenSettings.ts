import type { Position } from '../notation/position'
import { settingRow, type Entry, type Setting } from '../notebook/notebook'

/** A position written in an entry, once where one value stands for both legs. */
export interface Written {
  setting: Setting
  position: Position
  row: string
}

/** The positions an entry writes that can be read and judged: of an adjuster that contradicts itself, its definition is told and nothing else. */
export function writtenPositions(entry: Entry): Written[] {
  return writtenSettings(entry).flatMap(({ setting, row }) => (setting.reading.value && setting.adjuster.contradiction === undefined ? [{ setting, row, position: setting.reading.value }] : []))
}

/** The values an entry writes for its settings, each once. */
export function writtenSettings(entry: Entry): { setting: Setting; row: string }[] {
  const seen = new Set<unknown>()
  return [...entry.settings].flatMap(([slot, setting]) => {
    if (seen.has(setting.node)) return []
    seen.add(setting.node)
    return [{ setting, row: settingRow(slot) }]
  })
}
