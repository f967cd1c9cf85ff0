import type { Position } from '../notation/position'
import { settingRow, type Entry, type Setting } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'

/** A position written in an entry, once where one value stands for both legs. */
export interface Written {
  setting: Setting
  position: Position
  row: string
}

/** The positions an entry writes that can be read and judged: of an adjuster that contradicts itself, its definition is told and nothing else. */
export function writtenPositions({ settings }: Entry): readonly Written[] {
  return positionsIn(settings)
}

/** The values an entry writes for its settings, each once. */
export function writtenSettings({ settings }: Entry): readonly { setting: Setting; row: string }[] {
  return settingsIn(settings)
}

// A dozen rules ask for them.
const settingsIn = oncePer((settings: Entry['settings']) => {
  const seen = new Set<unknown>()
  const written: { setting: Setting; row: string }[] = []
  for (const [slot, setting] of settings) {
    if (seen.has(setting.node)) continue
    seen.add(setting.node)
    written.push({ setting, row: settingRow(slot) })
  }
  return written
})

const positionsIn = oncePer((settings: Entry['settings']) => {
  const written: Written[] = []
  for (const { setting, row } of settingsIn(settings)) {
    if (setting.reading.value && setting.adjuster.contradiction === undefined) written.push({ setting, row, position: setting.reading.value })
  }
  return written
})
