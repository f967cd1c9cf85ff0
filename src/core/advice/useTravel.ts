import type { End } from '../compute/sag/loadCase'
import { found } from '../compute/working/result'
import { travelUsedOf } from '../derived/travelUsedOf'
import { travelOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Advice, Advisor } from './advice'
import { smallMove } from './smallMove'

/** Whether the ride used the travel: with sag and springs right, what is left is compression damping, or oil. */
export const useTravel: Advisor = (notebook, entry) => travelAt(notebook, entry, 'front') ?? travelAt(notebook, entry, 'rear') ?? unread(notebook, entry)

const compressions: Record<'bottomed' | 'littleUsed', readonly string[]> = {
  bottomed: ['high_speed_compression', 'compression', 'low_speed_compression'],
  littleUsed: ['compression', 'low_speed_compression', 'high_speed_compression'],
}

function travelAt(notebook: Notebook, entry: Entry, end: End): Advice | undefined {
  const used = found(travelUsedOf(notebook, entry, end))
  if (used?.verdict !== 'bottomed' && used?.verdict !== 'littleUsed') return undefined
  const wanted = used.verdict === 'bottomed' ? 'more' : 'less'
  const move = smallMove(notebook, entry, end, compressions[used.verdict], wanted)
  if (!move) return undefined
  const travel = travelOf(notebook, end)!
  const share = printNumber(used.usedPercent.value, 0)
  return {
    topic: 'travel', kind: 'change', step: `try ${wanted} compression damping by the smallest step: ${move}`,
    evidence: [`${entry.key}: ${share} % of the ${end}’s travel was used, ${printNumber(used.reserveMm.value, 1)} mm in reserve`],
    expect: [wanted === 'more' ? `less than ${printNumber(travel - 2, 0)} mm used at the same place` : `more than ${printNumber(travel / 2, 0)} mm used at the same place`],
    assumes: ['sag and springs are right', 'the ride was as hard as the place asks for', 'oil level as the manual says'],
  }
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
