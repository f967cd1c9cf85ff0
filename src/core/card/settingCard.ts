import { positionWords, standsAt } from '../adjusters/positionWords'
import type { Adjuster, Leg } from '../adjusters/adjuster'
import { legWords } from '../adjusters/legWords'
import { unitWords } from '../adjusters/unitWords'
import { amountWords, changeWords } from '../adjusters/changeWords'
import { isTurned } from '../adjusters/describeTurning'
import { endOf, inNotation, ownCount, unitNamed } from '../adjusters/convert'
import { printNumber } from '../notation/amount'
import type { End } from '../notation/position'
import { readPosition } from '../notation/position'
import type { Unit } from '../notation/units'
import type { Entry } from '../notebook/notebook'
import { baselineFor } from '../derived/baselineFor'
import { countOf, isSame } from '../rules/standings'
import { slotKey } from '../adjusters/adjuster'
import { phrase, say } from '../words/say'
import { capital, sentence } from '../words/sentence'
import type { Card, CardSection } from './card'
import { turningSections } from './turningSections'

/** The card of an adjuster's position in an entry, in the order one asks at the machine: what and where it is, which way to turn it, what that does, how far it goes. */
export function settingCard(entry: Entry | undefined, adjuster: Adjuster, leg: Leg | undefined): Card {
  const { drawing, which, rest } = turningSections(adjuster)
  const subtitle = [adjuster.place, adjuster.tool, holdWords(adjuster)].filter(Boolean).join(' · ')
  return {
    title: leg ? `${adjuster.label}, ${legWords(leg, adjuster.on)}` : adjuster.label,
    ...(subtitle ? { subtitle } : {}),
    sections: [...contradictionSection(adjuster), ...which, ...effectSection(adjuster), ...(entry ? standingSections(entry, adjuster, leg) : []), ...rest],
    ...(drawing ? { drawing } : {}),
  }
}

function contradictionSection({ contradiction }: Adjuster): CardSection[] {
  return contradiction === undefined ? [] : [{ heading: say('Mend its definition first'), lines: [sentence(contradiction)], caution: true }]
}

const hold: Record<string, string> = { ball: phrase('held by a ball detent'), o_ring: phrase('held by an O-ring'), friction: phrase('held by friction'), locknut: phrase('held by a locknut'), nothing: phrase('held by nothing') }

function holdWords({ heldBy, condition }: Adjuster): string | undefined {
  const words = heldBy && hold[heldBy] && say(hold[heldBy])
  if (condition !== 'worn') return words
  return words ? say`${words}, worn: it may creep` : say('worn: it may creep')
}

function standingSections(entry: Entry, adjuster: Adjuster, leg: Leg | undefined): CardSection[] {
  const slot = slotKey(adjuster.id, leg)
  const standing = entry.state.get(slot)
  if (!standing) return [{ heading: say('Stands at'), lines: [say('not recorded yet')] }]
  const count = countOf(standing.setting)
  const carried = standing.setIn === entry ? '' : say`, carried from ${standing.setIn.key}`
  if (count === undefined) return [{ heading: say('Stands at'), lines: [`${standing.setting.node.text}${carried}`, ...whyNot(standing.setting.node.text, adjuster)] }]
  const own = standsAt(count, adjuster)
  const others = otherNotations(count, adjuster)
  const lines = [`${own}${carried}`, ...(others.length > 0 ? [say`the same as ${others.join(', ')}`] : []), ...shareLines(count, adjuster)]
  const changes = changeLines(entry, slot, count, adjuster)
  return [{ heading: say('Stands at'), lines }, ...(changes.length > 0 ? [{ heading: say('Changed'), lines: changes }] : [])]
}

/** Why a written position is no count of this adjuster. */
function whyNot(text: string, adjuster: Adjuster): string[] {
  const reading = readPosition(text, adjuster.control.counted === undefined)
  if (reading.value === undefined) return [reading.problem]
  const { missing } = ownCount(reading.value, adjuster)
  return missing === undefined ? [] : [say`to convert it, this is missing: ${missing}`]
}

/** Every other notation that the adjuster's ratios allow. */
function otherNotations(count: number, adjuster: Adjuster): string[] {
  const { counts, end } = adjuster
  const print = (unit: Unit, from: End | undefined): string[] => {
    const there = inNotation(count, adjuster, unit, from)
    return there.count === undefined ? [] : [positionWords({ amount: there.count, unit, ...(from === undefined ? {} : { end: from }) })]
  }
  // Another unit is counted from the end that is its custom on this adjuster; from the other it says nothing new.
  const units = ['clicks', 'turns', 'flats', 'mm', 'rings'].map(unitNamed).filter((unit) => unit !== counts && !isSameKind(unit, counts))
  return [...(end === undefined ? [] : print(counts, otherEnd[end])), ...units.flatMap((unit) => print(unit, endOf({ amount: 0, unit }, adjuster)))]
}

const otherEnd = { closed: 'open', open: 'closed' } as const

/** Rings are lines; and nobody counts flats of a screw that clicks. */
function isSameKind(unit: Unit, counts: Unit): boolean {
  return (unit.dimension === counts.dimension && unit.dimension !== 'turn') || (unit.symbol === 'flats' && counts.symbol === 'clicks')
}

function shareLines(count: number, adjuster: Adjuster): string[] {
  const { range, counts, end, rangeIs } = adjuster
  if (range === undefined) return isTurned(adjuster) ? [say`how far it goes is not noted: ${counts.dimension === 'length' ? say('measure it once at both its ends') : say('count it once from end to end')}`] : []
  if (end === undefined && counts.dimension === 'step') return stepLines(count, range, adjuster)
  // A set length or a dial begins anywhere, so that no share of it can be told.
  if (end === undefined && adjuster.control.counted !== undefined) return [say`it goes over ${printNumber(range)} ${unitWords(counts)} (${rangeIs === 'measured' ? say('measured') : say('the book’s')})`]
  const share = say`${printNumber((count / range) * 100, 0)} % of its range of ${printNumber(range)} ${unitWords(counts)} (${rangeIs === 'measured' ? say('measured') : say('the book’s')})`
  if (end === undefined) return [share]
  const [toClosed, toOpen] = end === 'closed' ? [count, range - count] : [range - count, count]
  return [share, say`${amountWords(counts, toClosed)} left to turn in, ${amountWords(counts, toOpen)} to turn out`]
}

/** Steps are numbered from 1, so how many are left either way follows. */
function stepLines(count: number, range: number, { higherIs, control, rangeIs }: Adjuster): string[] {
  const [up, down] = [range - count, count - 1]
  const [more, less] = higherIs === 'more' ? [up, down] : [down, up]
  return [say`of ${printNumber(range)} steps (${rangeIs === 'measured' ? say('counted here') : say('the book’s')})`, say`${printNumber(more)} left for ${say(control.more)}, ${printNumber(less)} for ${say(control.less)}`]
}

function changeLines(entry: Entry, slot: string, count: number, adjuster: Adjuster): string[] {
  const since = (other: Entry | undefined, words: string): string[] => {
    const before = countOf(other?.state.get(slot)?.setting)
    if (!other || other === entry || before === undefined) return []
    return [isSame(before, count) ? say`not since ${words}` : say`since ${words}: ${changeWords(adjuster, count - before)}`]
  }
  const baseline = baselineFor(entry)
  return [
    ...since(entry.parent, entry.parent?.key ?? ''),
    ...(baseline === entry.parent ? [] : since(baseline, `${baseline?.key ?? ''} (baseline)`)),
  ]
}

function effectSection({ control }: Adjuster): CardSection[] {
  return [{ heading: say('What it does'), lines: [`${capital(say(control.more))}: ${say(control.moreDoes)}.`, `${capital(say(control.less))}: ${say(control.lessDoes)}.`] }]
}
