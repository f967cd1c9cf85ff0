import { meansOf } from '../adjusters/changeWords'
import { unitWords } from '../adjusters/unitWords'
import { slotKey, type Adjuster, type Leg } from '../adjusters/adjuster'
import { convertAmount, inNotation, ownCount } from '../adjusters/convert'
import { lowestCount } from '../adjusters/share'
import { printPosition, type Position } from '../notation/position'
import { Refusal } from '../notebook/edits/refusal'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import { entryAt } from './entryAt'
import { slotOf } from './slotOf'
import type { GridPlace } from './view'

/** A position one count on: without a leg where it is written for both. */
export interface Nudged {
  entry: Entry
  adjuster: Adjuster
  leg?: Leg
  text: string
}

/** What one count is where the notebook names no smallest step; our own choice, small enough to be felt and no more. */
const usualSteps: Record<string, number> = { turns: 0.25, bar: 0.1, psi: 1, kPa: 10, 'N/mm': 0.5, 'kgf/mm': 0.05, 'lbf/in': 5, ml: 5 }

/**
 * The positions of cells one count further towards more or less of what they control, written in the notation they
 * stand in. A pair that is written as one value moves as one, however many of its cells are named.
 *
 * @throws Refusal at an end of the range, on the seat, and where nobody knows where it stands
 */
export function nudge(notebook: Notebook, cells: readonly GridPlace[], toward: 'more' | 'less'): Nudged[] {
  const done = new Set<string>()
  return cells.flatMap((place) => {
    const entry = entryAt(notebook, place.column)
    const slot = slotOf(notebook, entry, place.row)
    if (!slot) throw new Refusal(say('only a position is moved by a count; type the figure here'))
    const adjuster = notebook.adjusters.get(slot.id)!
    const key = place.row.slice('settings/'.length)
    if (done.has(`${entry.index} ${key}`)) return []
    const pair = pairOfOne(entry, adjuster, key)
    for (const each of pair ?? [key]) done.add(`${entry.index} ${each}`)
    const text = nudgedText(entry, adjuster, key, toward)
    return [{ entry, adjuster, text, ...(pair || slot.leg === undefined ? {} : { leg: slot.leg }) }]
  })
}

/** The slots of both legs where one value, here or where it is carried from, stands for them. */
function pairOfOne(entry: Entry, adjuster: Adjuster, key: string): string[] | undefined {
  const legs = adjuster.legs.map((leg) => slotKey(adjuster.id, leg))
  const node = entry.state.get(key)?.setting.node
  return legs.length > 1 && node && legs.every((each) => entry.state.get(each)?.setting.node === node) ? legs : undefined
}

function nudgedText(entry: Entry, adjuster: Adjuster, key: string, toward: 'more' | 'less'): string {
  const setting = entry.state.get(key)?.setting
  if (!setting) throw new Refusal(say`where ${adjuster.label} stands is not known here; write it down first`)
  const { value: position } = setting.reading
  const from = position && ownCount(position, adjuster).count
  if (position === undefined || from === undefined || adjuster.contradiction !== undefined) {
    throw new Refusal(say`‘${setting.node.text.trim()}’ is no position of ${adjuster.label} to count on from; write it anew`)
  }
  const size = stepOf(position, adjuster)
  const by = meansOf(adjuster, 1) === toward ? size : -size
  refuseBeyond(adjuster, from, from + by)
  const amount = inNotation(from + by, adjuster, position.unit ?? adjuster.counts, position.end ?? adjuster.end)
  if (amount.count === undefined) throw new Refusal(say`${adjuster.label} cannot be counted on in this notation; it needs ${amount.missing}`)
  return printPosition({ ...position, amount: amount.count })
}

/** One count in the adjuster's own; where a position is written in another unit, one of that. */
function stepOf({ unit }: Position, adjuster: Adjuster): number {
  const { counts, step } = adjuster
  if (unit === undefined || unit === counts) return step ?? usualSteps[counts.symbol] ?? 1
  return convertAmount(usualSteps[unit.symbol] ?? 1, unit, counts, adjuster).count ?? step ?? 1
}

/** Past an end or onto the seat, unless that leads back from further out. */
function refuseBeyond(adjuster: Adjuster, from: number, to: number): void {
  const { label, counts, end, range, control } = adjuster
  const isSetLength = counts.dimension === 'length' && end === undefined
  const lowest = isSetLength ? -Infinity : lowestCount(adjuster)
  if (to < from && to < lowest - 1e-9) throw new Refusal(say`${label} stands at ${end === 'closed' ? say('its seat') : say('the end it is counted from')}; there is nothing further that way`)
  if (to > from && range !== undefined && to > range + 1e-9) throw new Refusal(say`${label} stands at the end of its range of ${range} ${unitWords(counts)}; there is nothing further that way`)
  const seat = end === 'closed' ? 0 : end === 'open' ? range : undefined
  if (control.damping && seat !== undefined && Math.abs(to - seat) < 1e-9) {
    throw new Refusal(say`one more would seat ${label}: fully closed is where counting begins, no setting; type it if it was found so`)
  }
}
