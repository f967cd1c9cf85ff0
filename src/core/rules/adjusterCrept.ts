import type { Adjuster } from '../adjusters/adjuster'
import { printNumber } from '../notation/amount'
import { settingRow } from '../notebook/notebook'
import type { EntryRule, Report } from './rule'
import { changesOf, type Change } from './standings'

export const adjusterCrept: EntryRule = {
  code: 'adjuster-crept',
  severity: 'warning',
  says: 'An adjuster was found elsewhere than it was last left.',
  why: 'Either it crept, because its detent or O-ring is worn, or someone turned it. Both matter before the next change.',
  checkEntry: (entry) => (entry.asFound ? byValue(changesOf(entry)).map(report) : []),
}

/** Legs that share one written value and crept alike are one finding. */
function byValue(changes: readonly Change[]): [Change, ...Change[]][] {
  const groups: [Change, ...Change[]][] = []
  for (const change of changes) {
    const alike = groups.find(([first]) => first.setting.node === change.setting.node && first.before.setting.node === change.before.setting.node)
    if (alike) alike.push(change)
    else groups.push([change])
  }
  return groups
}

function report(changes: [Change, ...Change[]]): Report {
  const [{ slot, setting, before, by }] = changes
  const { adjuster, leg, node } = setting
  const legs = changes.length > 1 ? ', both legs' : leg ? `, ${leg} leg` : ''
  const message = `${adjuster.label}${legs}: found at ${node.text}, but left at ${before.setting.node.text} in ${before.setIn.key}; that is ${sayMove(by, adjuster)}. ${whatToDo(adjuster)}`
  return { message, range: node.range, row: settingRow(slot) }
}

function sayMove(by: number, { counts, end }: Adjuster): string {
  const size = printNumber(Math.abs(by), 2)
  const name = size === '1' && ['click', 'turn', 'mark', 'step'].includes(counts.dimension) ? counts.symbol.slice(0, -1) : counts.symbol
  if (end === undefined) return `${size} ${name} ${by > 0 ? 'higher' : 'lower'}`
  return `${size} ${name} further ${(by > 0) === (end === 'closed') ? 'out' : 'in'}`
}

const hold: Record<string, string> = {
  ball: 'Check its ball detent', o_ring: 'Check its O-ring', friction: 'Check what holds it', locknut: 'Check its locknut', nothing: 'Nothing holds it',
}

/** Pressures leak, tubes slip, and what is built in was changed by somebody. */
function whatToDo({ counts, control, heldBy, condition }: Adjuster): string {
  if (counts.dimension === 'pressure') return 'It leaked, or was read warmer or colder: check the valve, and read it cold.'
  if (['oil_level', 'spring_rate'].includes(control.name)) return 'Someone changed it: find out who, and why.'
  if (control.mustBeEven) return 'It slipped in the clamps or someone moved it: check the pinch bolts’ torque.'
  const worn = condition === 'worn' ? ', noted as worn' : ''
  return `It crept or someone turned it. ${hold[heldBy ?? ''] ?? 'Check its detent or O-ring'}${worn}.`
}
