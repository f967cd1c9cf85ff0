import type { Adjuster } from '../adjusters/adjuster'
import { legWords } from '../adjusters/legWords'
import { unitWord, unitWords } from '../adjusters/unitWords'
import { printNumber } from '../notation/amount'
import { settingRow } from '../notebook/notebook'
import { phrase, say } from '../words/say'
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
  const legs = changes.length > 1 ? `, ${say('both legs')}` : leg ? `, ${legWords(leg)}` : ''
  const message = say`${adjuster.label}${legs}: found at ${node.text}, but left at ${before.setting.node.text} in ${before.setIn.key}; that is ${sayMove(by, adjuster)}. ${whatToDo(adjuster)}`
  return { message, range: node.range, row: settingRow(slot) }
}

function sayMove(by: number, { counts, end }: Adjuster): string {
  const number = printNumber(Math.abs(by), 2)
  const size = `${number} ${number === '1' ? unitWord(counts) : unitWords(counts)}`
  if (end === undefined) return by > 0 ? say`${size} higher` : say`${size} lower`
  return (by > 0) === (end === 'closed') ? say`${size} further out` : say`${size} further in`
}

const hold: Record<string, string> = {
  ball: phrase('Check its ball detent'), o_ring: phrase('Check its O-ring'), friction: phrase('Check what holds it'), locknut: phrase('Check its locknut'), nothing: phrase('Nothing holds it'),
}

/** Pressures leak, tubes slip, and what is built in was changed by somebody. */
function whatToDo({ counts, control, heldBy, condition }: Adjuster): string {
  if (counts.dimension === 'pressure') return say('It leaked, or was read warmer or colder: check the valve, and read it cold.')
  if (['oil_level', 'spring_rate'].includes(control.name)) return say('Someone changed it: find out who, and why.')
  if (control.mustBeEven) return say('It slipped in the clamps or someone moved it: check the pinch bolts’ torque.')
  const check = say(hold[heldBy ?? ''] ?? phrase('Check its detent or O-ring'))
  return condition === 'worn' ? say`It crept or someone turned it. ${check}, noted as worn.` : say`It crept or someone turned it. ${check}.`
}
