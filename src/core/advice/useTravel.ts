import type { End } from '../compute/sag/loadCase'
import type { TravelUsed } from '../compute/travel/travelUsed'
import { found } from '../compute/working/result'
import { travelUsedOf } from '../derived/travelUsedOf'
import { travelOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
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
  const assumes = [say('sag and springs are right'), say('the ride was as hard as the place asks for')]
  if (move) {
    return {
      topic: 'travel', kind: 'change', step: say`try ${say(wanted)} compression damping by the smallest step: ${move}`, evidence,
      expect: [atTheSamePlace(travelOf(notebook, end)!, wanted, units)], assumes: [...assumes, say('oil level as the manual says')],
    }
  }
  const oil = end === 'front' ? moveOil(notebook, entry, wanted, units) : undefined
  if (oil) return { topic: 'travel', kind: 'change', step: oil.step, evidence, expect: [oil.expect, atTheSamePlace(travelOf(notebook, end)!, wanted, units)], assumes: [...assumes, ...oil.assumes] }
  // Nothing that is turned is left; one at the end of its travel cannot be passed over all the same.
  return used.verdict === 'bottomed' ? {
    topic: 'travel', kind: 'measure', step: say`look at what holds the end of the ${say(end)}’s stroke: ${end === 'front' ? say('oil level, spring and bump stops') : say('spring and bump stop')}; write down what is fitted`, evidence,
    expect: [say`${say(used.suggests[1]!)}, or ${end === 'front' ? say('the oil too low') : say('its stop worn')}`], assumes,
  } : undefined
}

function evidenceOf({ key }: Entry, end: End, { usedPercent, reserveMm }: TravelUsed, units: DisplayUnits): string {
  return say`${key}: ${printNumber(usedPercent.value, 0)} % of the ${say(end)}’s travel was used, ${sayIn(units)(reserveMm.value, 'mm')} in reserve`
}

function atTheSamePlace(travelMm: number, wanted: 'more' | 'less', units: DisplayUnits): string {
  const figure = sayIn(units)
  return wanted === 'more' ? say`less than ${figure(travelMm - 2, 'mm', 0)} used at the same place` : say`more than ${figure(travelMm / 2, 'mm', 0)} used at the same place`
}

/** A ride without a word of its travel. */
function unread(notebook: Notebook, entry: Entry): Advice | undefined {
  const ends = (['front', 'rear'] as const).filter((end) => travelOf(notebook, end) !== undefined)
  if (ends.length === 0 || ends.some((end) => found(travelUsedOf(notebook, entry, end)))) return undefined
  return {
    topic: 'travel', kind: 'measure', step: say`put a cable tie on ${ends.includes('front') ? say('a fork tube') : say('the shock’s shaft')}, ride, and write down how far it was pushed`,
    evidence: [say`${entry.key}: no travel used was written down`], expect: [say('whether the travel is used, and what is left')], assumes: [],
  }
}
