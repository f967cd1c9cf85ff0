import type { End } from '../compute/sag/loadCase'
import type { TravelUsed } from '../compute/travel/travelUsed'
import { found } from '../compute/working/result'
import { travelUsedOf } from '../derived/travelUsedOf'
import { travelOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Advice, Advisor } from './advice'
import { moveOil } from './moveOil'
import { smallMove } from './smallMove'

/** Whether the ride used the travel: with sag and springs right, what is left is compression damping, then oil. */
export const useTravel: Advisor = (notebook, entry, units) => travelAt(notebook, entry, 'front', units) ?? travelAt(notebook, entry, 'rear', units) ?? unread(notebook, entry)

const compressions: Record<'bottomed' | 'littleUsed', readonly string[]> = {
  bottomed: ['high_speed_compression', 'compression', 'low_speed_compression'],
  littleUsed: ['compression', 'low_speed_compression', 'high_speed_compression'],
}

function travelAt(notebook: Notebook, entry: Entry, end: End, units: DisplayUnits): Advice | undefined {
  const used = found(travelUsedOf(notebook, entry, end))
  if (used?.verdict !== 'bottomed' && used?.verdict !== 'littleUsed') return undefined
  const wanted = used.verdict === 'bottomed' ? 'more' : 'less'
  const evidence = [evidenceOf(entry, end, used, units)]
  const move = smallMove(notebook, entry, end, compressions[used.verdict], wanted)
  const assumes = ['sag and springs are right', 'the ride was as hard as the place asks for']
  if (move) {
    return {
      topic: 'travel', kind: 'change', step: `try ${wanted} compression damping by the smallest step: ${move}`, evidence,
      expect: [atTheSamePlace(travelOf(notebook, end)!, wanted, units)], assumes: [...assumes, 'oil level as the manual says'],
    }
  }
  const oil = end === 'front' ? moveOil(notebook, entry, wanted, units) : undefined
  if (oil) return { topic: 'travel', kind: 'change', step: oil.step, evidence, expect: [oil.expect, atTheSamePlace(travelOf(notebook, end)!, wanted, units)], assumes: [...assumes, ...oil.assumes] }
  // Nothing that is turned is left; one at the end of its travel cannot be passed over all the same.
  return used.verdict === 'bottomed' ? {
    topic: 'travel', kind: 'measure', step: `look at what holds the end of the ${end}’s stroke: ${end === 'front' ? 'oil level, spring and bump stops' : 'spring and bump stop'}; write down what is fitted`, evidence,
    expect: [`${used.suggests[1]!}, or ${end === 'front' ? 'the oil too low' : 'its stop worn'}`], assumes,
  } : undefined
}

function evidenceOf({ key }: Entry, end: End, { usedPercent, reserveMm }: TravelUsed, units: DisplayUnits): string {
  return `${key}: ${printNumber(usedPercent.value, 0)} % of the ${end}’s travel was used, ${sayIn(units)(reserveMm.value, 'mm')} in reserve`
}

function atTheSamePlace(travelMm: number, wanted: 'more' | 'less', units: DisplayUnits): string {
  const figure = sayIn(units)
  return wanted === 'more' ? `less than ${figure(travelMm - 2, 'mm', 0)} used at the same place` : `more than ${figure(travelMm / 2, 'mm', 0)} used at the same place`
}

/** A ride without a word of its travel. */
function unread(notebook: Notebook, entry: Entry): Advice | undefined {
  const ends = (['front', 'rear'] as const).filter((end) => travelOf(notebook, end) !== undefined)
  if (ends.length === 0 || ends.some((end) => found(travelUsedOf(notebook, entry, end)))) return undefined
  return {
    topic: 'travel', kind: 'measure', step: `put a cable tie on ${ends.includes('front') ? 'a fork tube' : 'the shock’s shaft'}, ride, and write down how far it was pushed`,
    evidence: [`${entry.key}: no travel used was written down`], expect: ['whether the travel is used, and what is left'], assumes: [],
  }
}
