import { slotKey, type Adjuster, type Leg } from '../../core/adjusters/adjuster'
import { changeWords } from '../../core/adjusters/changeWords'
import { ownPosition } from '../../core/adjusters/convert'
import { readAmount } from '../../core/notation/amount'
import { printPosition, type Position } from '../../core/notation/position'
import type { Entry, Setting } from '../../core/notebook/notebook'
import { countOf } from '../../core/rules/standings'
import { say } from '../../core/words/say'
import { typedPositions } from './typedPositions'
import { plainSnippet, type Asked, type Completion } from './completion'

/**
 * Positions for a setting. Before a number is typed: where it stands, one step either way with what that gives, as the
 * other leg stands. Behind a number: every notation the adjuster has.
 */
export function positionCompletions(asked: Asked): Completion[] {
  const adjuster = asked.adjusters.get(asked.path[3]!)
  if (!adjuster) return []
  const leg = adjuster.legs.find((each) => each === asked.path[4])
  const before = asked.entry?.parent?.state.get(slotKey(adjuster.id, leg ?? adjuster.legs[0]))
  const typed = readAmount(asked.cursor.typed).value
  if (typed) return typedPositions(asked.cursor.typed, typed, adjuster, before?.setting.reading.value)
  const stands = before ? standing(before.setting, before.setIn) : []
  return unique([...otherLeg(asked, adjuster, leg), ...stands, ...blanks(adjuster, before?.setting.reading.value), ...pairShape(asked, adjuster, leg)])
}

/** Where it stood before this entry, and one step from there either way. */
function standing(setting: Setting, setIn: Entry): Completion[] {
  const { text } = setting.node
  const now: Completion = { label: text, kind: 'position', detail: `as in ${setIn.key}`, insert: text }
  const { adjuster, reading } = setting
  const count = countOf(setting)
  const step = stepOf(adjuster)
  if (count === undefined || step === undefined || !reading.value) return [now]
  const steps = [-step, step].flatMap((by): Completion[] => {
    const there = count + by
    if (there < -1e-6 || (adjuster.range !== undefined && there > adjuster.range + 1e-6)) return []
    const label = printPosition(like(reading.value!, ownPosition(Math.max(there, 0), adjuster)))
    return [{ label, kind: 'position', detail: changeWords(adjuster, by), insert: label }]
  })
  return [now, ...steps]
}

/** One step worth trying, in the adjuster's own count. */
function stepOf({ step, counts }: Adjuster): number | undefined {
  if (step !== undefined) return step
  const usual: Record<string, number> = { turns: 1 / 4, flats: 1, mm: 1, bar: 0.1, psi: 1, kPa: 10, ml: 5 }
  return usual[counts.symbol]
}

/** Written as briefly as before: `4 out` beside `3 out`, `4 clicks out` beside `3 clicks out`. */
function like(before: Position, position: Position): Position {
  const isOwnUnit = before.unit === undefined || before.unit.dimension === position.unit?.dimension
  if (!isOwnUnit) return position
  return {
    amount: position.amount,
    ...(before.unit && position.unit ? { unit: position.unit } : {}),
    ...(before.end && position.end ? { end: position.end } : {}),
  }
}

function otherLeg({ entry }: Asked, adjuster: Adjuster, leg: Leg | undefined): Completion[] {
  const other = leg && adjuster.legs.find((each) => each !== leg)
  const set = other && entry?.settings.get(slotKey(adjuster.id, other))
  return set && !set.shared ? [{ label: set.node.text, kind: 'position', detail: say`like the ${say(other)} leg`, insert: set.node.text }] : []
}

/** The unit and end, with room for the number. */
function blanks(adjuster: Adjuster, before: Position | undefined): Completion[] {
  const own = ownPosition(0, adjuster)
  const short: Position = own.end ? { amount: 0, end: own.end } : own
  const forms = own.end && (before === undefined || before.unit === undefined) ? [short, own] : [own, short]
  return forms.map((form) => {
    const words = printPosition(form)
    const insert = words.split('0').map(plainSnippet).join('$1')
    return { label: words.replace('0', '…'), kind: 'position', detail: adjuster.label, filter: words, insert, snippet: true }
  })
}

/** `{left: …, right: …}`, where a pair is written as one value so far. */
function pairShape({ cursor }: Asked, adjuster: Adjuster, leg: Leg | undefined): Completion[] {
  if (leg || adjuster.legs.length < 2 || cursor.quote || cursor.typed !== '') return []
  return [{ label: '{left, right}', kind: 'shape', detail: say('leg by leg'), insert: '{left: $1, right: $2}', snippet: true, again: true }]
}

function unique(items: readonly Completion[]): Completion[] {
  return items.filter(({ label }, at) => items.findIndex((each) => each.label === label) === at)
}
