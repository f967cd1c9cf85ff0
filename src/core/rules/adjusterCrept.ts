import { printNumber } from '../notation/amount'
import { settingRow } from '../notebook/notebook'
import type { EntryRule } from './rule'
import { changesOf } from './standings'

const hold: Record<string, string> = {
  ball: 'check its ball detent', o_ring: 'check its O-ring', friction: 'check what holds it', locknut: 'check its locknut', nothing: 'nothing holds it',
}

export const adjusterCrept: EntryRule = {
  code: 'adjuster-crept',
  severity: 'warning',
  says: 'An adjuster was found elsewhere than it was last left.',
  why: 'Either it crept, because its detent or O-ring is worn, or someone turned it. Both matter before the next change.',
  checkEntry: (entry) =>
    !entry.asFound ? [] : changesOf(entry).map(({ slot, setting, before, by }) => {
      const { adjuster, leg, node } = setting
      const check = hold[adjuster.heldBy ?? ''] ?? 'check its detent or O-ring'
      const which = `${adjuster.label}${leg ? `, ${leg} leg` : ''}`
      const moved = `${by > 0 ? '+' : ''}${printNumber(by)} ${adjuster.counts.symbol}`
      return { message: `${which}: found at ${node.text}, left at ${before.setting.node.text} in ${before.setIn.key} (${moved}). It crept or someone turned it; ${check}.`, range: node.range, row: settingRow(slot) }
    }),
}
