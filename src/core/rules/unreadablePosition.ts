import { say } from '../words/say'
import type { EntryRule } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'
import { writtenSettings } from './writtenSettings'

export const unreadablePosition: EntryRule = {
  code: 'unreadable-position',
  severity: 'error',
  says: 'A position cannot be read.',
  why: 'A record that cannot be read cannot be set again. Write `3 clicks out`, `1 3/4 turns in`, `4 flats in`, `3 rings`, `12 mm` or a bare number.',
  checkEntry: (entry, { text }) =>
    writtenSettings(entry).flatMap(({ setting, row }) => {
      if (setting.reading.value) return []
      const { problem, suggestion } = setting.reading
      const fixes = suggestion === undefined ? [] : writeInstead(text, setting.node, suggestion)
      return [{ message: say`${setting.adjuster.label}: ‘${setting.node.text}’ is no position: ${problem}`, range: setting.node.range, row, fixes }]
    }),
}
