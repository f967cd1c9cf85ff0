import { standsAt } from '../adjusters/positionWords'
import { slotKey, type Adjuster, type Slot } from '../adjusters/adjuster'
import { unitWords } from '../adjusters/unitWords'
import { ownCount, ownPosition } from '../adjusters/convert'
import { isTurned } from '../adjusters/describeTurning'
import { lowestCount } from '../adjusters/share'
import { countAt } from '../derived/countAt'
import { printNumber } from '../notation/amount'
import { isSame } from '../rules/standings'
import { say } from '../words/say'
import type { SlotPair } from './pairSlots'
import type { State } from './settingRow'
import { whyNoCount } from './whyNoCount'

/** Nothing to do; a way from one count to another, in the wanted side's own count; or why there is none, and what to do. */
export type Reach = { stays: true } | { from: number; to: number } | { why: string; instead: string }

/** Whether a slot can be brought from where it stands to where it is wanted. */
export function reach({ left, right }: SlotPair, now: State, wanted: State): Reach {
  const [writtenNow, writtenWanted] = [written(left, now), written(right, wanted)]
  if (writtenWanted === undefined) return writtenNow === undefined ? { stays: true } : unknownGoal(right, writtenNow)
  const { adjuster } = right!
  const to = countAt(wanted.entry, right!)
  if (to === undefined) return writtenNow === writtenWanted && sameCounting(left!.adjuster, adjuster) ? { stays: true } : noCount(right!, wanted)
  const before = left && countAt(now.entry, left)
  const from = before === undefined ? undefined : ownCount(ownPosition(before, left!.adjuster), adjuster)
  if (from?.count !== undefined && isSame(from.count, to)) return { stays: true }
  const beyond = beyondRange(adjuster, to)
  if (beyond) return beyond
  if (writtenNow === undefined) return { why: say('where it stands now is not recorded'), instead: setFromItsEnd(adjuster, to) }
  if (from?.count === undefined) return { why: say`where it stands now, ‘${writtenNow}’, is no count of this adjuster: ${from ? say`it needs ${from.missing!}` : whyNoCount(left!, now.entry)}`, instead: setFromItsEnd(adjuster, to) }
  return isBeyond(adjuster, from.count) ? { why: say`it is recorded at ${standsAt(from.count, adjuster)}, beyond its end, so that is no place to count from`, instead: setFromItsEnd(adjuster, to) } : { from: from.count, to }
}

function written(slot: Slot | undefined, { entry }: State): string | undefined {
  return slot && entry.state.get(slotKey(slot.adjuster.id, slot.leg))?.setting.node.text.trim()
}

const sameCounting = (a: Adjuster, b: Adjuster) => a.counts === b.counts && a.end === b.end

function unknownGoal(right: Slot | undefined, stands: string): Reach {
  const why = right ? say('where it should stand is not recorded') : say('the state wanted knows no such adjuster')
  return { why, instead: say`Leave it where it stands, at ${stands}, or set it by the one who knows.` }
}

function noCount(slot: Slot, wanted: State): Reach {
  return {
    why: say`where it should stand, ‘${written(slot, wanted) ?? ''}’, is no count of this adjuster: ${whyNoCount(slot, wanted.entry)}`,
    instead: say('Set it by hand to what is written, and mend the notebook.'),
  }
}

function beyondRange(adjuster: Adjuster, to: number): Reach | undefined {
  if (!isBeyond(adjuster, to)) return undefined
  const { range, rangeIs, counts } = adjuster
  const ends = range === undefined || to < 0 ? say('below its zero') : say`beyond its range of ${printNumber(range)} ${unitWords(counts)}${rangeIs === 'book' ? say(' by the book') : ''}`
  return {
    why: say`it should stand at ${standsAt(to, adjuster)}, ${ends}`,
    instead: rangeIs === 'book' && to >= 0 ? say('Do not force it: go as far as it turns freely, count, and note the range as measured.') : say('Do not force it: the record is wrong, so count it anew and find out what was meant.'),
  }
}

/** Below its lowest, where it has one, or above its range. A length that is set has no lowest that its figures tell. */
function isBeyond(adjuster: Adjuster, count: number): boolean {
  const { range, counts, end } = adjuster
  const isSetLength = counts.dimension === 'length' && end === undefined
  const tooLow = !isSetLength && count < (counts.dimension === 'step' ? lowestCount(adjuster) : 0) - 1e-9
  return tooLow || (range !== undefined && count > range + 1e-9)
}

/** How to come to a count when nobody knows where it stands: from the end it is counted from. */
function setFromItsEnd(adjuster: Adjuster, to: number): string {
  const goal = standsAt(to, adjuster)
  if (!isTurned(adjuster) || adjuster.end === undefined || ['mark', 'step', 'dial'].includes(adjuster.counts.dimension)) return say`Set it to ${goal}.`
  return adjuster.end === 'closed' ? say`Turn it in, lightly, until it seats; then back out, to ${goal}.` : say`Back it off fully; then turn it in, to ${goal}.`
}
